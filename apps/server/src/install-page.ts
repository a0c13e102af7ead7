/** The page that a phone opens first: how it comes to trust this machine. In words a person can follow; no script. */
export function installPage(name: string, appUrl: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Treewright on this phone</title>
</head>
<body>
<h1>Treewright on this phone</h1>
<p>A phone keeps an app for use without signal only from a machine that it trusts. The file below makes it trust this machine under the
name ${name}, and no other site: the authority in it can sign for that name alone.</p>
<p><a href="/authority.crt">Get the authority's file</a></p>
<h2>iPhone or iPad</h2>
<ol>
<li>Open this page in Safari and get the file. Allow it.</li>
<li>Settings, General, VPN and Device Management: choose the Treewright authority, Install.</li>
<li>Settings, General, About, Certificate Trust Settings: switch it on.</li>
<li>In Safari open <a href="${appUrl}">${appUrl}</a>. Share, then Add to Home Screen.</li>
</ol>
<h2>Android</h2>
<ol>
<li>Get the file.</li>
<li>Settings, Security, More security settings, Install from storage, CA certificate: choose the file.</li>
<li>In Chrome open <a href="${appUrl}">${appUrl}</a>. Menu, then Install app.</li>
</ol>
<p>The words differ a little from phone to phone. To take the trust back, remove the authority in the same place.</p>
</body>
</html>
`;
}
