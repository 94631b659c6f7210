// Programs that a test starts, each with all that it starts itself.
import {spawn} from 'node:child_process';
import {readFileSync, readdirSync} from 'node:fs';
import {at_end} from './at_end.mjs';
import {patiently, until} from './glass.mjs';

// The state of those that are still there; one that has ended and was only not asked for it is none.
function living(group) {
  const states = [];
  for (const pid of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    let stat;
    try {
      stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    } catch (error) {
      if (error.code === 'ENOENT' || error.code === 'ESRCH') continue; // ended meanwhile
      throw error;
    }
    const [state, , its_group] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    if (Number(its_group) === group && state !== 'Z') states.push(`${pid} ${state}`);
  }
  return states;
}

const all = new Set();
process.once('SIGTERM', async () => {
  await Promise.all([...all].map((each) => each.kill()));
  process.exit(1);
});

export class Running {
  said = '';
  // Ends with the test at the latest.
  constructor(test, program, words, env = {}) {
    this.program = program;
    this.child = spawn(program, words, {detached: true, stdio: ['ignore', 'pipe', 'pipe'],
                                        env: {...process.env, ...env}});
    for (const out of [this.child.stdout, this.child.stderr]) out.on('data', (bytes) => { this.said += bytes; });
    this.ended = new Promise((done) => {
      this.child.once('exit', done);
      this.child.once('error', (error) => { this.said += error; done(); });
    });
    this.ended.then(() => { this.has_ended = true; });
    at_end(test, () => this.kill());
    all.add(this);
  }

  // What it says of itself, once it does.
  async says(pattern) {
    const found = await until(async () => this.said.match(pattern) ?? (this.has_ended && 'ended'),
                              () => `${this.program} does not say it is ready: ${this.said}`);
    if (found === 'ended') throw new Error(`${this.program} has ended: ${this.said}`);
    return found[1];
  }

  // With all its processes, and no goodbye.
  async kill() {
    const group = this.child.pid;
    if (group === undefined) return; // it never started
    if (living(group).length > 0) process.kill(-group, 'SIGKILL');
    await until(async () => living(group).length === 0, () => `${this.program} lives on: ${living(group)}`);
    await patiently(this.ended, `${this.program} does not end`);
    all.delete(this);
  }
}

// The name of a display that nobody sees, as DISPLAY has it.
export async function display(test) {
  const running = new Running(test, 'Xvfb', ['-displayfd', '1', '-screen', '0', '1400x1000x24', '-nolisten', 'tcp']);
  return ':' + await running.says(/^(\d+)$/m);
}
