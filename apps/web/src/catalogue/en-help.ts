/** Words of the help screen. `access` is also the page docs/reference/accessibility.md, which is made from it. */
export const EN_HELP = {
  title: "Help",
  problem: {
    title: "Something went wrong",
    says: "A problem file helps whoever looks after Treewright to find the fault. It tells versions, the kind of browser, the screen, counts, and the last 200 things that were done by their kind and place, such as “entered saddle.head.spreadTips”.",
    without:
      "It holds no reading, no name, no words that were typed, nobody’s id, and no time finer than minutes. Read it before you save it: what you see is the whole of it.",
    make: "Make a problem file",
    whole: "The whole problem file",
    save: "Save this file",
    saved: "Saved among your downloads. It was sent to nobody: sending it is up to you.",
    tell: "To tell somebody: send the file, and in your own words what you did and what you had expected, to the person who set Treewright up for you. The program knows no address and sends nothing by itself.",
  },
  others: {
    title: "What others wrote",
    says: "Parts of this app are the work of others, who let it be used: under which licence stands in one list. It is there without signal.",
    look: "Look at the notices",
  },
  access: {
    title: "Can everybody use it?",
    aim: "The aim is level AA of the Web Content Accessibility Guidelines (WCAG) 2.2, a recommendation of the W3C. No claim is made that it is met: only the checks below were made, by programs and by looking at pictures of the screens.",
    testedTitle: "What was tested, and how",
    tested: {
      axe: "Every step of a visit, call-out, the first screen, your data and this page, with axe-core in Chromium: nothing that its rules for WCAG 2.2 A and AA find. Such rules find a part of the barriers, not all.",
      keys: "A visit begun, filled over several steps and finished with the keyboard alone, in Chromium at three sizes of window. Wherever it was looked, something had the focus, was in sight, and had a line round it.",
      reflow:
        "320 px wide, as on a screen of 1280 px enlarged to 400 %: of the screens of a visit still being filled, nothing has to be moved sideways but the row of steps, drawings and tables.",
      forced:
        "Forced colours, as a high-contrast setting makes them: every key keeps a border or a ground that is seen, and what is chosen is told by more than colour.",
      names:
        "Names, roles and states as Chromium hands them to a screen reader, for the question being taken and the number keys.",
      motion: "Where less motion is asked for, nothing moves.",
    },
    failsTitle: "What is known to fail",
    fails: {
      drawings:
        "Drawings can be seen and not heard. The figures they show stand in words and tables beside them, not every line of them.",
      german:
        "In German every screen, the owner’s page, the letter and the agreement are German, but for the work on a case file by itself; the sheet and the template, which the fitter works by, are still English. No German fitter has read any of it yet.",
      bench: "“Work on a case file by itself” is made for a desk and was not checked with forced colours.",
      paper:
        "The PDFs are tagged as paragraphs alone: headings and tables are not marked as such, and drawings are not described.",
    },
    notTestedTitle: "What was not tested",
    notTested: {
      readers: "No real screen reader was used: not NVDA, JAWS, VoiceOver, TalkBack or Orca.",
      phones: "No iPhone or iPad, no Android phone, no browser but Chromium on Linux.",
      people: "No person with a disability has tried it. No switch, no voice control, no magnifier.",
    },
    tellTitle: "How to tell us",
    tell: "What cannot be used is a fault like any other. Make a problem file on the page “Help” of the app and send it, with what you could not do and what you use, to the person who set Treewright up for you.",
  },
} as const;
