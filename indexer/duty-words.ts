import type { Duty } from './duty.ts';
import { tokenise } from './reading/tokens.ts';

/** Words that make one think of a duty, whole or as the head or front of a compound; in seven languages. Common practice. */
const words: Readonly<Partial<Record<Duty, string>>> = {
  'load-holding': `pawl, ratchet, hook, winch, hoist, crane, lift, lifting, lifter, jack, sheave, block and tackle, load, shackle, capstan, davit, windlass, elevator,
    sperrklinke, klinke, sperrad, sperrrad, haken, winde, seilwinde, hebezeug, kran, aufzug, kettenzug, flaschenzug, hubwerk, wagenheber, heber, last, schäkel,
    cliquet, crochet, treuil, palan, grue, levage, levee, cric, charge, manille, cabestan, rochet,
    nottolino, arpionismo, gancio, argano, verricello, paranco, gru, sollevamento, carico, grillo, cricchetto,
    trinquete, gancho, cabrestante, polipasto, grua, elevacion, elevador, carga, grillete, torno,
    pal, haak, lier, takel, kraan, hijs, hef, lift, last, sluiting, palrad,
    フック, ウインチ, ホイスト, クレーン, リフト, 巻上, 爪, ラチェット`,
  'brake-or-steering': `brake, braking, brakes, steering, steer, hub, headset, handlebar, fork, stem, disc brake, brake pad, brake shoe,
    bremse, brems, lenkung, lenker, lenk, nabe, steuersatz, vorbau, gabel,
    frein, freinage, direction, guidon, moyeu, fourche, potence,
    freno, frenatura, sterzo, mozzo, manubrio, forcella,
    freno, frenado, direccion, buje de rueda, manillar, horquilla, maza,
    rem, remmen, stuur, naaf, stuurpen, voorvork,
    ブレーキ, ステアリング, ハブ, ハンドルバー, フォーク`,
  climbing: `climbing, ascender, descender, belay, carabiner, karabiner, harness, abseil, via ferrata,
    klettern, kletter, steigklemme, abseilgerät, klettersteig, escalade, mousqueton, baudrier, arrampicata, moschettone, imbracatura, escalada, mosqueton, arnes, klimmen, klim, カラビナ`,
  medical: `medical, surgical, dental, infusion, syringe pump, wheelchair, patient, medizinisch, medizin, chirurgisch, rollstuhl, patienten, medical device, fauteuil roulant, chirurgical, medico, chirurgico, sedia a rotelle, medica, quirurgico, silla de ruedas, medisch, rolstoel, 医療, 車椅子`,
  aviation: `aircraft, aviation, aeroplane, airplane, helicopter, glider, propeller hub, parachute, flugzeug, luftfahrt, hubschrauber, segelflugzeug, fallschirm, avion, aviation, helicoptere, parachute, aereo, aeroplano, elicottero, paracadute, avion, helicoptero, paracaidas, vliegtuig, luchtvaart, helikopter, parachute, 航空, 航空機`,
  pressure: `pressure vessel, regulator, scuba, diving regulator, gas valve, relief valve, safety valve, boiler, compressor, druckbehälter, druckminderer, atemregler, sicherheitsventil, kessel, kompressor, detendeur, soupape de securite, chaudiere, compresseur, recipiente a pressione, erogatore, valvola di sicurezza, caldaia, compressore, regulador, valvula de seguridad, caldera, compresor, drukvat, ademautomaat, veiligheidsklep, ketel, compressor, 圧力容器, 安全弁`,
  mains: `mains, mains lead, 230v, 240v, 120v, 110v, 115v, power cord, mains switch, netzkabel, netzstecker, netzschalter, netzspannung, cordon secteur, secteur, cavo di alimentazione, tensione di rete, cable de red, tension de red, netsnoer, netspanning, 電源コード`,
};

/** First words to the phrases that begin with them. */
const phrases = new Map<string, { words: string[]; duty: Duty }[]>();
/** Words of one piece that also stand inside German and Dutch compounds: Bremshebel, Seilwinde. */
const compounding: { word: string; duty: Duty }[] = [];
for (const [duty, list] of Object.entries(words) as [Duty, string][])
  for (const phrase of list
    .split(',')
    .map(p => p.trim())
    .filter(Boolean)) {
    const pieces = tokenise(phrase).map(t => t.text);
    const first = pieces[0]!;
    phrases.set(first, [...(phrases.get(first) ?? []), { words: pieces, duty }]);
    if (pieces.length === 1 && first.length >= 5 && first.charCodeAt(0) < 0x3000)
      compounding.push({ word: first, duty });
  }
for (const found of phrases.values()) found.sort((a, b) => b.words.length - a.words.length);
compounding.push({ word: 'brems', duty: 'brake-or-steering' }, { word: 'lenk', duty: 'brake-or-steering' });

/**
 * A duty that a word of a model's name, heading or line proposes, for a person to confirm: pawl, brake, hook, winch, hub.
 * Null where none stands. Offsets are half-open, in UTF-16 units of the text.
 */
export function proposeDuty(text: string): { duty: Duty; word: string; start: number; end: number } | null {
  const tokens = tokenise(text.slice(0, 4_000));
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (token.kind === 'mark') continue;
    for (const spelled of [token.text, singular(token.text)]) {
      for (const phrase of phrases.get(spelled) ?? []) {
        const last = at + phrase.words.length - 1;
        const matches = phrase.words.every(
          (w, i) => i === 0 || tokens[at + i]?.text === w || singular(tokens[at + i]?.text ?? '') === w,
        );
        if (matches) return found(text, phrase.duty, token.start, tokens[last]!.end);
      }
    }
    if (token.kind !== 'word' || token.text.length < 7 || token.text.length > 60) continue;
    const inside = compounding.find(c => token.text.startsWith(c.word) || token.text.endsWith(c.word));
    if (inside) return found(text, inside.duty, token.start, token.end);
  }
  return null;
}

const singular = (word: string) => (word.length > 4 && word.endsWith('s') ? word.slice(0, -1) : word);

const found = (text: string, duty: Duty, start: number, end: number) => ({
  duty,
  word: text.slice(start, end),
  start,
  end,
});
