// Medians of each figure over the lines of two files, and what the first is to the second.
//
//   node medians.js OURS THEIRS
const fs = require('fs');
const lines = (file) => fs.readFileSync(file, 'utf8').trim().split('\n').map((l) => JSON.parse(l));
const median = (list) => list.sort((a, b) => a - b)[Math.floor(list.length / 2)];
const [ours, theirs] = process.argv.slice(2).map(lines);
for (const key of Object.keys(ours[0])) {
  const mine = median(ours.map((line) => line[key]));
  const other = theirs[0][key] === undefined ? null : median(theirs.map((line) => line[key]));
  console.log(key.padEnd(16) + String(Number(mine.toPrecision(4))).padStart(12) +
              (other === null ? '' : String(Number(other.toPrecision(4))).padStart(12) +
                                     (mine / other).toFixed(2).padStart(9)));
}
