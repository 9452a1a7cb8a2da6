// One run against the document database: push, pull, one edit, a replay. Prints one line of JSON.
//
//   node database_client.js PORT FOLDER MODULES RECORDS
const fs = require('fs');
const [port, folder, modules, count] = process.argv.slice(2);
const PouchDB = require('module').createRequire(modules + '/')('pouchdb');
const batch = { batch_size: 1000, batches_limit: 1 };
const seconds = () => Number(process.hrtime.bigint()) / 1e9;
const median = (list) => list.sort((a, b) => a - b)[Math.floor(list.length / 2)];

function record(k) {
  return {
    _id: String(k).padStart(8, '0'), object: 'object ' + k, treatment: 'replace',
    material: 1000 + k, labour: 2000 + k, source: 'made up',
  };
}

async function main() {
  const url = `http://127.0.0.1:${port}/house`;
  const laptop = new PouchDB(folder + '/laptop');
  for (let from = 0; from < count; from += 1000) {
    await laptop.bulkDocs(Array.from({ length: Math.min(1000, count - from) },
                                     (_, k) => record(from + k)));
  }
  let begun = seconds();
  await laptop.replicate.to(url, batch);
  const push = count / (seconds() - begun);
  const phone = new PouchDB(folder + '/phone');
  begun = seconds();
  await phone.replicate.from(url, batch);
  const pull = count / (seconds() - begun);
  const edits = [];
  for (let k = 0; k < 9; ++k) {
    begun = seconds();
    const one = await laptop.get('00000007');
    one.material += 1;
    await laptop.put(one);
    await laptop.replicate.to(url, batch);
    edits.push((seconds() - begun) * 1000);
  }
  if ((await phone.info()).doc_count !== Number(count)) {
    throw new Error('not everything came down');
  }
  const memory = /VmHWM:\s+(\d+)/.exec(fs.readFileSync('/proc/self/status', 'utf8'))[1];
  console.log(JSON.stringify({
    push_per_s: push, pull_per_s: pull, edit_ms: median(edits), device_kib: Number(memory),
  }));
}
main().catch((error) => { console.error(error); process.exit(1); });
