// Says what the Khronos glTF validator finds in a file, one finding a line; exit code 1 where that is an error or a warning.
// usage: node validate.js NODE_MODULES FILE.glb
const fs = require('fs');
const validator = require(process.argv[2] + '/gltf-validator');

validator.validateBytes(new Uint8Array(fs.readFileSync(process.argv[3]))).then((report) => {
  for (const m of report.issues.messages) console.log(['error', 'warning', 'info', 'hint'][m.severity], m.code, m.pointer);
  process.exit(report.issues.numErrors + report.issues.numWarnings > 0 ? 1 : 0);
}, (failure) => { console.log('error', failure); process.exit(1); });
