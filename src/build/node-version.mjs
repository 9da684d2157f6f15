// Plain JavaScript on purpose: it must run on an old Node to say so in words.
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 12)) {
  console.error(
    `This project needs Node 22.12 or newer; this is Node ${process.versions.node}.\n` +
      'It brings its own: run "npm ci" with install scripts allowed, then start it through npm ("npm start", "npm test").\n' +
      'Where install scripts are switched off, install Node 24 on the machine instead.',
  );
  process.exit(1);
}
