/**
 * Reasons as an owner is told them, by rule. `HORSE` stands for the horse's name. An empty one adds nothing to what the
 * answer itself says. A rule that is not here is told in its own words.
 */
export const OWNER_REASONS: { readonly [rule: string]: string } = {
  "horse-lame": "Trotted up in hand, HORSE was uneven.",
  "horse-nerves": "We were told of, or saw, stumbling, swaying or a dragged toe.",
  "horse-lesion": "There is a wound, a sore or a swelling under saddle or girth.",
  "horse-pain-strong": "HORSE reacted strongly to the hand.",
  "horse-pain-clear": "HORSE reacted to the hand, clearly or at more than one place.",
  "horse-pain-mild": "HORSE reacted a little to the hand, at one place, and did so again.",
  "horse-other-sign":
    "Something was told or seen (a sudden change, a fall, painkillers, heat, lost muscle or weight, a saddle that always slips the same way, or disease about) that a vet looks at first.",
  "horse-not-touched": "HORSE has not yet been touched at every place, on both sides.",
  "horse-not-trotted":
    "HORSE has not yet been seen trotted up in hand, or stumbling has not been asked about.",
  "horse-not-asked": "We have not yet asked about HORSE's past, question by question, or looked at its skin.",
  "horse-off-work":
    "HORSE was off work for more than four weeks; its back wants six to eight weeks of work before a head is made for it.",
  "horse-work-not-known": "We do not know yet whether HORSE has been in work.",
  "horse-changing":
    "HORSE is growing, or has a hollow behind the shoulder: its back will change, so no head is made for it now.",
  "horse-shape-not-known": "We do not know yet whether HORSE's back will stay as it is.",
  "horse-no-reason": "",
  "load-under-15": "",
  "load-15-to-20":
    "Rider and tack together weigh between 15 and 20 per cent of what HORSE weighs: keep rides short at first, and look at the back after each.",
  "load-over-20":
    "Rider and tack together weigh more than a fifth of what HORSE weighs: a lighter rider or lighter tack would help HORSE.",
  "condition-outside":
    "HORSE is leaner or rounder than is usual; as that comes right, the back changes its shape, so we look again sooner.",
  "trace-void":
    "HORSE has changed too much since an earlier tracing of its back, so the back is traced again.",
  "right-claim": "It is part of a claim, an enquiry or a sale dispute, and so it stays as it was found.",
  "right-claim-not-asked": "We do not know yet whether the saddle is part of a claim or dispute.",
  "right-consent-refused": "Its legal owner has not agreed to any work.",
  "right-consent-not-asked": "We have not yet asked the saddle's legal owner.",
  "right-other-horses": "Other horses wear this saddle, and they have not been measured.",
  "right-harms-another": "A head made for HORSE would harm another horse that wears this saddle.",
  "saddle-cracked": "The tree is cracked, or its layers have parted. Even a short crack grows.",
  "saddle-part-failed":
    "A part that holds it together has failed or gives: a bar, a web, a strap, a rivet, a plate or the head.",
  "saddle-rider-part-doubtful":
    "There is doubt in a part that carries the rider, and only the bare tree can show.",
  "saddle-incident":
    "It was in an accident (rolled on, fallen with, dropped, driven over or the like); what that did cannot be seen from outside.",
  "saddle-incident-bare":
    "It has been in an accident. Stripped, nothing was found; its head is not pressed any more.",
  "saddle-not-looked": "Some parts that can be seen or felt have not been looked at yet.",
  "saddle-other-part-doubtful":
    "Rust, a dark ring, a musty smell or doubt at rivets, layers or plates was found.",
  "saddle-not-bare": "Its tree has not been seen bare.",
  "saddle-incident-not-known": "Nobody can say that it was never fallen with, rolled on or driven over.",
  "saddle-past-not-clean":
    "Its head was altered before, more than once or by somebody unknown, or nobody knows.",
  "saddle-repaired": "Its head was repaired, replated or heated before; that makes it the maker's.",
  "saddle-old": "Its tree is over five years old, or its age is not known.",
  "saddle-twisted": "Its two sides do not match: the tree may be twisted, and a press does not cure a twist.",
  "saddle-square-not-measured": "We have not yet measured whether its two sides match.",
  "saddle-identity": "Its number cannot be read or does not match, so nothing is known of its past.",
  "saddle-nothing-found": "",
  "standing-warranty": "The maker's warranty may still run, so the maker is asked first.",
  "standing-maker-refuses": "The maker does not permit this work by us.",
  "standing-may-not-assess": "Judging this fit is for a colleague who may.",
  "standing-may-not-exchange": "Changing the plate is for a colleague who may.",
  "standing-may-not-press":
    "We can prepare the work; the press itself is for a colleague who is qualified for it.",
  "standing-may-not-strip": "Stripping the saddle is for a colleague who may.",
  "standing-assess-not-known": "It is not settled yet who may judge this fit.",
  "standing-exchange-not-known": "It is not settled yet who may change the plate.",
  "standing-press-not-known": "It is not settled yet who may put the head to the press.",
  "standing-strip-not-known": "It is not settled yet who may strip the saddle.",
  "fit-all-inside": "",
  "fit-rider-first":
    "The seat is too small for its rider, or the stirrups hang unevenly; that is put right before any saddle is judged.",
  "fit-set-up": "Girthing, placing or padding it otherwise cures that.",
  "fit-panel-first": "The panel is flat, lumpy or crooked, and that is put right before the head is judged.",
  "fit-panel": "The head is right; the panel can make up what is missing.",
  "fit-lift-front":
    "It stands too low over the withers, and nothing else is wrong with its head: its front is filled a little.",
  "fit-template-one-sided":
    "The template shows a fault on one side only, and the hand there feels none; it is held into the head again first.",
  "fit-wasted":
    "HORSE has a hollow behind the shoulder. A head made narrow to fit it would stop the muscle from coming back, so it is filled for now.",
  "fit-fill-too-deep": "The hollow is deeper than a fill can carry: HORSE is built up first.",
  "fit-set-back": "The head would fit best near as it was made, before the last change.",
  "fit-exchange": "A plate that is at hand, or another position of the inserts, makes the whole saddle fit.",
  "fit-no-plate-at-hand": "A plate that fits this head would do it, and none is at hand.",
  "fit-no-position": "A head of this build would do it, and no position of its inserts makes it.",
  "fit-heat":
    "A small change of the head would make the whole saddle fit; in a head of this build only heat makes it.",
  "fit-springs":
    "There is a gap under the middle of the panel. The tree has springs along its rails, so part of it is wanted; it is looked at again under the rider.",
  "set-back-nothing-on-record": "",
  "set-back-head-stays": "",
  "set-back-heads-elsewhere": "",
  "set-back-as-made-not-read": "",
  "set-back-same-way": "",
  "set-back-not-near": "",
  "set-back-reversals": "The head has been moved to and fro twice, and is not set back again.",
  "set-back-plate-not-kept": "The plate that was in this head before was not kept.",
  "fit-press": "A small change at the press makes the whole saddle fit, and the hands under it agree.",
  "fit-press-needs-template": "The template has to be held into the head first, with a measure at both tips.",
  "fit-press-needs-hands": "The hands under the saddle have to feel the same fault first.",
  "fit-dressed-limit": "The change is larger than a head may take inside its saddle.",
  "fit-spent": "A head would fit that lies beyond what this tree may still be moved.",
  "fit-other-saddle":
    "Its rails and its curve stay as they are, whatever head it has, and they do not follow this back.",
  "fit-wrong-place": "It lies on the shoulder blade or behind the last rib, and there is no room to move it.",
  "fit-cannot-tell": "",
  "fit-rider-heavy":
    "Rider and tack together weigh more than a fifth of what HORSE weighs. A lighter load comes first; no work on a saddle makes up for it.",
  "fit-exchange-against-hands":
    "The hands under the saddle feel the contrary of what that plate would cure, so a template is held into the head first.",
  "fit-hands-against-template":
    "The hands under the saddle and the template held into the head say different things, and both are taken again.",
  "fit-not-ridden": "The saddle has not yet been seen ridden.",
  "fit-does-not-rest":
    "In our calculation the saddle does not come to rest on this back as we read it, so we read it again.",
  "way-no-exchange": "Its head has no plate or inserts that could be changed.",
  "way-changeable": "Its head takes another plate; a plate is never bent to size.",
  "way-bar-fixings": "The metal bar in its head is not surely held, and that is for its maker.",
  "way-inserts-unlike":
    "The inserts in its head do not stand alike on both sides. That is put right first, and then everything is read again.",
  "way-inserts-not-known": "How the inserts in its head stand was not read yet.",
  "way-inserts-grit": "There is grit where the inserts slide; it is cleaned out first.",
  "way-polymer-solid":
    "Its head is solid polymer. That is moved by heat and never by pressure, and only by the maker's people.",
  "way-maker-only": "A head of this build is the maker's to move.",
  "way-build-not-known": "We do not know yet how its head is built.",
  "way-moved-not-known": "We do not know yet how far its head has been moved already.",
  "way-polymer-cold":
    "A polymer tree is brought to the warmth of a room first, for hours, and how warm this one is was not looked at or is too little.",
  "way-owners-word": "How its head is built was told and not seen.",
  "way-not-told": "Nobody has told yet how its head is built.",
};

/** A rule as the owner is told it; empty where the answer says it already, undefined where only the rule's words are left. */
export const ownerReason = (rule: string): string | undefined => OWNER_REASONS[rule];
