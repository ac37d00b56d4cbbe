import type { Eighths } from '../base/eighths.js';
import type { Block, Scene, Speech } from '../script/types.js';
import { fadeCue, itemSeconds, secondsPerEighth, type TimeSpan, uncalibrated } from '../trade/screen-time-rates.js';
import { timeAction } from './screen-time-action.js';
import { addSpans, longerSpan, noTime } from './screen-time-spans.js';
import { timeSpeech } from './screen-time-speech.js';
import type { ScreenTime } from './types.js';

/**
 * A scene's screen time in seconds, measured twice: by the page (7.5 s an eighth) and from what it holds. A `time`
 * note wins over the estimate. Low and high reach at least as far as an unchecked estimate is known to stray.
 */
export function estimateScreenTime(scene: Scene, length: Eighths): ScreenTime {
  const pageRule = length * secondsPerEighth;
  const noted = scene.notes.findLast((note) => note.kind === 'time');
  if (noted) return { seconds: noted.seconds, low: noted.seconds, high: noted.seconds, pageRule, noted: true };
  const { low, likely, high } = longerSpan(timeScene(scene), itemSeconds.shot);
  return {
    seconds: round(likely),
    low: round(Math.min(low, likely * (1 - uncalibrated))),
    high: round(Math.max(high, likely * (1 + uncalibrated))),
    pageRule,
    noted: false,
  };
}

/**
 * The times of scenes, summed. The ends are summed too: scenes of one script stray together, since the same people
 * play and cut them.
 */
export function totalScreenTime(times: readonly ScreenTime[]): ScreenTime {
  const sum = (pick: (time: ScreenTime) => number) => round(times.reduce((total, time) => total + pick(time), 0));
  return {
    seconds: sum((time) => time.seconds),
    low: sum((time) => time.low),
    high: sum((time) => time.high),
    pageRule: sum((time) => time.pageRule),
    noted: times.some((time) => time.noted),
  };
}

/** Speech with what is done during it, then picture with the recorded voice over it. */
interface Stretch {
  spoken: TimeSpan;
  during: TimeSpan;
  picture: TimeSpan;
  voice: TimeSpan;
}

function timeScene(scene: Scene): TimeSpan {
  const montage = scene.heading.qualifiers.some((one) => /MONTAGE|SERIES OF SHOTS/i.test(one));
  const stretches: Stretch[] = [startStretch()];
  for (const block of scene.blocks) addBlock(stretches, block, montage);
  return stretches.map(timeStretch).reduce(addSpans, noTime);
}

function startStretch(): Stretch {
  return { spoken: noTime, during: noTime, picture: noTime, voice: noTime };
}

function addBlock(stretches: Stretch[], block: Block, montage: boolean): void {
  const last = stretches.at(-1) as Stretch;
  if (block.kind === 'speech') addSpeech(stretches, block);
  if (block.kind === 'transition' && fadeCue.test(block.line.text)) {
    last.picture = addSpans(last.picture, itemSeconds.fade);
  }
  if (block.kind !== 'action') return;
  for (const { time, duringSpeech } of timeAction(block, montage)) {
    const track = duringSpeech && last.spoken !== noTime && last.picture === noTime ? 'during' : 'picture';
    last[track] = addSpans(last[track], time);
  }
}

/** A recorded voice lies over the picture; any other speech opens a stretch of its own after one. */
function addSpeech(stretches: Stretch[], speech: Speech): void {
  let last = stretches.at(-1) as Stretch;
  const time = timeSpeech(speech);
  if (speech.cue.voice === 'voice-over') {
    last.voice = addSpans(last.voice, time);
    return;
  }
  if (last.picture !== noTime || last.voice !== noTime) {
    last = startStretch();
    stretches.push(last);
  }
  last.spoken = addSpans(last.spoken, time);
}

function timeStretch({ spoken, during, picture, voice }: Stretch): TimeSpan {
  return addSpans(longerSpan(spoken, during), longerSpan(picture, voice));
}

/** To a tenth of a second, so that sums print without dust. */
function round(seconds: number): number {
  return Math.round(seconds * 10) / 10;
}
