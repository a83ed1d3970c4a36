import { currentLoop } from "veladis/sensor";
import * as severity from "veladis/severity";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";
import { confirmRefusals } from "./confirm-refusals";
import { exactRefusals } from "./exact-refusals";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const s: Record<string, Loose> = severity;

const judged = (machine: unknown, scheme: unknown = "iso-10816-3-2009", reading: unknown = "4 mm/s rms") =>
  s.classify(reading, { scheme, machine });
const machine = (facts: unknown) => s.classify("4 mm/s rms", { scheme: "iso-10816-3-2009", machine: facts });
const rule = s.classifier("iso-10816-3-2009", "group 1 rigid", "mm/s rms");
const ruleOfLevels = s.classifier("iso-10816-3-2009", "group 1 rigid", "dB re 1e-9 m/s");
const changed = (scheme: string, facts: string, now = "4 mm/s rms", before = "2 mm/s rms") =>
  s.changeFromBaseline(now, before, { scheme, machine: facts });

const source = { title: "site rule 12", provenance: "memory" };
const criterion = { as: "mm/s rms", limits: { "A/B": 1, "B/C": 2, "C/D": 4 }, source };
const scheme = { id: "site-rule-12", kind: "zones", standard: "site rule 12", classes: [{ criteria: [criterion] }] };
const pelletMill = {
  name: "pellet mill",
  judgedAs: "gear drive",
  facts: { support: "rigid" },
  source: { title: "Hollowmere site rule 9, invented", provenance: "memory" },
};
const ownKind = (parts: object) => s.defineMachineKind({ ...pelletMill, ...parts });
const ownKit = () => s.severityToolkit({ machineKinds: [pelletMill, { ...pelletMill, name: "shredder" }] });
const defined = (parts: object) => s.defineScheme({ ...scheme, ...parts });
const withClass = (parts: object) => defined({ classes: [{ criteria: [criterion], ...parts }] });
const withCriterion = (parts: object) => withClass({ criteria: [{ ...criterion, ...parts }] });
const grades = (names: unknown) => defined({ kind: "grades", grades: names });
let deep: object = {};
for (let i = 0; i < 20; i++) deep = { deep };

const cases: Cases = {
  "judgePoints, a point of the housing on a machine of the shaft": () =>
    s.judgePoints("casing vertical 60 um pp", { type: "steam turbine", power: "12 MW", place: "shaft" }),
  "defineMachineKind, nothing": () => s.defineMachineKind(),
  "defineMachineKind, no name": () => ownKind({ name: undefined }),
  "defineMachineKind, a number for a name": () => ownKind({ name: 7 }),
  "classifier, another word for gaps": () =>
    s.classifier("iso-10816-3-2009", "group 1 rigid", "mm/s rms").array([1], undefined, { nan: "drop" }),
  "classifier, an option of a batch there is none of": () =>
    s.classifier("iso-10816-3-2009", "group 1 rigid", "mm/s rms").array([1], undefined, { whole: true }),
  "defineMachineKind, a name with a digit": () => ownKind({ name: "mill 2" }),
  "defineMachineKind, a name that is built in": () => ownKind({ name: "gearbox" }),
  "defineMachineKind, a name that says a fact": () => ownKind({ name: "rigid press" }),
  "defineMachineKind, one name for a list": () => ownKind({ also: "pelletiser" }),
  "defineMachineKind, one name twice": () => ownKind({ also: ["Pellet-Mill"] }),
  "defineMachineKind, judged as another kind than there is": () => ownKind({ judgedAs: "gear driv" }),
  "defineMachineKind, a type among its facts": () => ownKind({ facts: { type: "pump" } }),
  "defineMachineKind, one scheme for a list": () => ownKind({ schemes: "iso-10816-3-2009" }),
  "defineMachineKind, no source": () => ownKind({ source: undefined }),
  "severityToolkit, nothing": () => s.severityToolkit(),
  "severityToolkit, one kind for a list": () => s.severityToolkit({ machineKinds: pelletMill }),
  "severityToolkit, two kinds of one name": () => s.severityToolkit({ machineKinds: [pelletMill, pelletMill] }),
  "severityToolkit, another fact than the kind has": () => ownKit().parseMachine("pellet mill 160 kW on springs"),
  "severityToolkit, two kinds in one line": () => ownKit().parseMachine("pellet mill shredder 160 kW"),
  "severityToolkit, a number for a line": () => ownKit().parseMachine(160),
  "classifier, null for options": () => s.classifier("iso-10816-3-2009", "group 1 rigid", "mm/s rms", null),
  "zoneWord, a kind that is none": () => s.zoneWord("zone", "B"),
  "zoneWord, no zone": () => s.zoneWord("zones"),
  "parseMachine, a Roman numeral further behind a label": () => s.parseMachine("pump category II 2980 r/min (I)"),
  "marginText, no judgement": () => s.marginText(),
  "marginText, a kind that is none": () => s.marginText({ ...judged("group 1 rigid"), kind: "zone" }),
  "marginText, a margin without decibels": () => s.marginText({ ...judged("group 1 rigid"), margin: { ratio: 2 } }),
  "marginText, an option there is none of": () => s.marginText(judged("group 1 rigid"), { digit: 4 }),
  "severityColour, no place": () => s.severityColour(undefined, 4),
  "severityColour, of no zones": () => s.severityColour(0, 0),
  "classify, no options": () => s.classify("4 mm/s rms"),
  "classify, a word for options": () => s.classify("2 mm/s rms", "iso-10816-3-2009"),
  "classify, no reading": () => judged("group 1 rigid", undefined, null),
  "classify, no readings": () => judged("group 1 rigid", undefined, []),
  "classify, two readings of one quantity and detector": () =>
    judged("group 1 rigid", undefined, ["2 mm/s rms", "0.5 in/s rms"]),
  "classify, no scheme": () => judged("group 1 rigid", null),
  "classify, a scheme near one": () => judged("group 1 rigid", "iso-10816-3-2010"),
  "classify, a scheme near none": () => judged("group 1 rigid", "best practice"),
  "classify, a scheme whose id is a number": () => judged("group 1 rigid", { ...scheme, id: 12 }),
  "classify, two readings without frequency": () => judged({}, withClass({}), ["1 g pk", "80 um pp"]),
  "classify, acceleration without frequency": () => judged("group 1 rigid", undefined, "1 g pk"),
  "classify, null for the crest factor": () =>
    s.classify("4 mm/s rms", {
      scheme: "iso-10816-3-2009",
      machine: "group 1 rigid",
      crestFactor: null,
    } as never),
  "classify, a crest factor across quantities": () =>
    s.classify("1 g pk at 25 Hz", { scheme: "iso-10816-3-2009", machine: "group 1 rigid", crestFactor: 3 }),
  "classify, velocity where the shaft is measured": () =>
    judged("motor 3000 r/min", "iso-7919-3-2009", "4 mm/s rms at 50 Hz"),
  "classifier, velocity where the shaft is measured": () =>
    s.classifier("iso-7919-3-2009", "motor 3000 r/min", "mm/s rms", { at: "50 Hz" }),
  "classify, a reading on the housing where the shaft is measured": () =>
    judged("motor 3000 r/min housing", "iso-7919-3-2009", "80 um pp"),
  "classify, limits that fall with a speed not told": () =>
    s.classify("4 mm/s rms", { scheme: withCriterion({ limits: { "A/B": { rootOf: 12000 } } }), machine: {} }),
  "parsePoints, a number without a name": () => s.parsePoints("DE-H 3.1, 2.2 mm/s rms"),
  "parsePoints, a name without a number": () => s.parsePoints("DE-H, DE-V 2.2 mm/s rms"),
  "parsePoints, a coverage factor as a name": () => s.parsePoints("DE-H 3.1, k=2, DE-V 2.2 mm/s rms"),
  "parsePoints, no comma between two": () => s.parsePoints("DE-H 9.9 DE-V 2.2 mm/s rms"),
  "parseMachine, a label of two words in one": () => s.parseMachine("pump category II/I"),
  "parseMachine, a label and another behind and": () => s.parseMachine("pump region allowable and preferred"),
  "parseMachine, a label and another behind a comma": () => s.parseMachine("motor class III, II"),
  "parseMachine, a power and a number in brackets": () => s.parseMachine("pump 90 kW (nominal 300)"),
  "parsePoints, a fact of the machine for a name": () => s.parsePoints("housing 3.9 mm/s rms"),
  "parsePoints, a number that may be part of a name": () => s.parsePoints("ID fan 1, motor DE 4.1 mm/s rms"),
  "parsePoints, too long a text": () => s.parsePoints("P 4.9 ".repeat(2000)),
  "parseMachine, a point that may part thousands": () => s.parseMachine("fan 1.000 kW 1480 r/min"),
  "parsePoints, an uncertainty": () => s.parsePoints("DE-H 3.1 ± 0.2 mm/s rms"),
  "parsePoints, a coverage factor": () => s.parsePoints("DE-H 3.1, k=2, DE-V 2.2 mm/s rms"),
  "judgePoints, readings at rest without names": () =>
    s.judgePoints("DE-H 3, DE-V 2 mm/s rms", "pump 90 kW", { background: "0.3, 0.2 mm/s rms" }),
  "parsePoints, a point twice": () => s.parsePoints("DE-H 3.1, DE-H 2.2 mm/s rms"),
  "parsePoints, too many": () => s.parsePoints(Array.from({ length: 101 }, (_, i) => `P${i} 1`).join(", ")),
  "parsePoints, no type at the end": () => s.parsePoints("DE-H 3.1 mm/s rms, DE-V 2.2"),
  "parsePoints, a comma that is read in two ways": () => s.parsePoints("DE-H 1,500; DE-V 2,2 mm/s rms"),
  "parsePoints, no text": () => s.parsePoints(5),
  "judgePoints, points that are no list": () => s.judgePoints(5, "pump 90 kW"),
  "judgePoints, a name that is no text": () => s.judgePoints([{ point: 5, reading: "1 mm/s rms" }], "pump 90 kW"),
  "judgePoints, a point without its reading at rest": () =>
    s.judgePoints("DE-H 3, DE-V 2 mm/s rms", "pump 90 kW", { background: "DE-H 0.3 mm/s rms" }),
  "judgePoints, a reading at rest of another point": () =>
    s.judgePoints("DE-H 3 mm/s rms", "pump 90 kW", { background: "DE-H 0.3, DE-V 0.2 mm/s rms" }),
  "judgePoints, no points": () => s.judgePoints([], "pump 90 kW"),
  "judgePoints, a point that is none": () => s.judgePoints([5], "pump 90 kW"),
  "judge, a machine that no table is for": () => s.judge("4 mm/s rms", "motor 60000 r/min 90000 kW, shaft"),
  "judge, in many words": () =>
    s.judge("4 mm/s rms", "motor 60000 r/min 90000 kW, shaft, group 1, class III, category II, part casing, band low"),
  "judge, as data": () =>
    s.judge("4 mm/s rms", { type: "motor", speed: "60000 r/min", power: "90000 kW", place: "shaft" }),
  "judge, a generating set that may be of any kind": () => s.judge("4 mm/s rms", "generating set 5 MW 1500 r/min"),
  "judge, a generating set where nothing is assumed": () =>
    s.judge("4 mm/s rms", "generating set 5 MW 1500 r/min", { assume: "nothing" }),
  "judge, a new machine without acceptance limits where nothing is assumed": () =>
    s.judge("2 mm/s rms", "gear drive, 300 kW, 600 r/min, housing, new", { assume: "nothing" }),
  "judge, a named scheme that is for machines in service, of a new one": () =>
    s.classify("2 mm/s rms", { scheme: "iso-10816-7-2009", machine: "pump 90 kW category II new" }),
  "judge, a named scheme without condition and place where nothing is assumed": () =>
    s.classify("2 mm/s rms", { scheme: "iso-10816-7-2009", machine: "pump 90 kW category II", assume: "nothing" }),
  "judge, a size in words where nothing is assumed": () =>
    s.judge("2 mm/s rms", "small pump 300 kW 1485 r/min category I housing in service", { assume: "nothing" }),
  "judge, no kind of machine": () => s.judge("4 mm/s rms", "90 kW 1485 r/min rigid"),
  "judge, a power left out where nothing is assumed": () =>
    s.judge("4 mm/s rms", "motor 1485 r/min rigid", { assume: "nothing" }),
  "judge, a place left out where nothing is assumed": () =>
    s.judge("80 um pp", "motor 400 kW 1485 r/min group 1 rigid", { assume: "nothing" }),
  "judge, a word not understood where nothing is assumed": () =>
    s.judge("4 mm/s rms", "motr 90 kW motor 1485 r/min rigid", { assume: "nothing" }),
  "judge, a label and a power that contradict": () => s.judge("4 mm/s rms", "motor 400 kW 1485 r/min group 2 rigid"),
  "judge, a reading below the range of its loop": () =>
    s.judge(currentLoop("0 to 8 mm/s rms").reading(3.9), "motor 400 kW 1485 r/min rigid"),
  "judge, a label and a power outside its scheme": () => s.judge("4 mm/s rms", "motor 11 kW 1485 r/min group 2 rigid"),
  "judge, schemes that are no list": () => s.judge("4 mm/s rms", "motor 90 kW", { schemes: "iso-10816-3-2009" }),
  "machineClassifier, schemes of two kinds of zones": () =>
    s.machineClassifier("fan 1480 r/min", "mm/s rms", {
      schemes: [
        defined({ within: { power: { to: 15 } } }),
        defined({
          within: { power: { above: 15 } },
          classes: [{ criteria: [{ ...criterion, limits: { "B/C": 2, "C/D": 4 } }] }],
        }),
      ],
    }),
  "schemesFor, null for options": () => s.schemesFor("motor 90 kW", null),
  "judge, a place that only one of the two would leave open": () =>
    s.judge("40 um pp", "generator 300 kW shaft height 40 mm 3000 r/min rigid"),
  "judge, a displacement of a machine that no scheme is for": () => s.judge("40 um pp", "hydro set 5 kW 30 r/min"),
  "judge, a displacement that zones or other limits would judge": () => s.judge("2 mil pp", "fan 90 kW 1480 r/min"),
  "judge, a label that no scheme for such a machine has": () => s.judge("4 mm/s rms", "motor 11 kW 1485 r/min group 3"),
  "defineScheme, a height that is a number": () => withCriterion({ height: 2 }),
  "defineScheme, a height below zero": () => withCriterion({ height: { above: -1, perMetre: 20 } }),
  "defineScheme, a height that adds nothing": () => withCriterion({ height: { above: 1.5, perMetre: 0 } }),
  "classify, ranges that are informative": () => judged({}, "iso-20816-1-2016-ranges"),
  "machineClassifier, a machine that no table is for": () =>
    s.machineClassifier("motor 60000 r/min 90000 kW, shaft", "mm/s rms"),
  "schemesFor, a machine that no table is for": () => s.schemesFor("motor 60000 r/min 90000 kW, shaft"),
  "machine, nothing": () => machine(null),
  "machine, an empty line": () => machine(" "),
  "machine, a number": () => machine(7),
  "machine, a list": () => machine(["motor"]),
  "machine, a line of any length": () => machine("motor ".repeat(100)),
  "machine, a category that contradicts the application": () => machine("industrial fan 400 kW BV-3"),
  "machine, an application that there is none of": () => machine({ type: "fan", application: "bakery" } as never),
  "machine, two supports of one direction": () => machine("rigid axially, flexible axially"),
  "machine, two directions of a natural frequency": () => machine("horizontal natural 18 Hz vertically"),
  "machine, a natural frequency of a direction there is none of": () => machine("motor natural 18 Hz laterally"),
  "machine, facts of a direction there is none of": () => machine({ byDirection: { lateral: {} } }),
  "judgePoints, a point in another direction than the one told": () =>
    s.judgePoints("DE-A 3.1 mm/s rms", "motor 200 kW 1480 r/min rigid axially, direction vertical"),
  "machine, two directions of the reading": () => machine("motor direction axial, direction vertical"),
  "machine, a direction there is none of": () => machine({ direction: "lateral" }),
  "machine, a fact of a direction there is none of": () => machine({ byDirection: { axial: { stiffness: 1 } } }),
  "machine, the power of several": () => machine("pump 2 x 45 kW"),
  "machine, a support that is both": () => machine("pump rigid/flexible"),
  "judge, a kind behind a word that is not understood": () => s.judge("4 mm/s rms", "roof exhaust fan 4 kW"),
  "machine, two powers in a line": () => machine("motor 90 kW 80 kW"),
  "machine, two kinds in a line": () => machine("pump, fan"),
  "machine, words that make two kinds of one": () => machine("compressor, screw, reciprocating"),
  "machine, a kind beside words that make another": () => machine("generator, diesel, pump"),
  "machine, a generator with its driver, which may be the set": () => machine("generator driven by gas turbine"),
  "machine, a fact set aside that contradicts another": () => machine("fan flexible, beside rigid"),
  "machine, a fact beside its driver": () => machine("fan driven by motor on springs"),
  "machine, a driver of what nothing drives": () => machine("motor driven by diesel engine"),
  "machine, a driver that may be of several kinds": () => machine("generator, turbine driven"),
  "machine, a word that makes another kind behind it": () => machine("pump, diesel"),
  "machine, a word that makes another kind, of which there is none": () => machine("pump, plunger"),
  "machine, a name of several kinds beside a kind": () => machine("pump, generating set"),
  "machine, driven by nothing that is named": () => machine("pump driven"),
  "judge, a blower that may be of two kinds": () => s.judge("4 mm/s rms", "blower 90 kW 1480 r/min"),
  "machine, words that contradict in a line": () => machine("rigid on springs"),
  "machine, a support and a mounting that contradict": () => machine("motor rigid, mounting free"),
  "machine, a second category among other words": () => machine("pump category II resp. I"),
  "machine, a second power in brackets": () => machine("pump 400 kW (nom. 250)"),
  "machine, two heights with one unit": () => machine("motor 315 (280) mm"),
  "machine, two speeds in a line": () => machine("1480 rpm 1485 rpm"),
  "machine, two line frequencies in a line": () => machine("4-pole 50 Hz 60 Hz"),
  "machine, two numbers of poles in a line": () => machine("2-pole 4-pole"),
  "machine, poles that the speed does not fit": () => machine("4-pole 2980 rpm"),
  "machine, poles and a line frequency that the speed does not fit": () => machine("4-pole 50 Hz 1780 rpm"),
  "machine, two apparent powers in a line": () => machine("500 kVA 600 kVA"),
  "machine, two power factors in a line": () => machine("500 kVA cos phi 0.8, cos phi 0.9"),
  "machine, a power factor above one": () => machine("500 kVA power factor 1.2"),
  "machine, a horsepower on both sides of what decides": () =>
    s.judge("2 mm/s rms", "fan 400 hp 1480 r/min rigid BV-3"),
  "machine, an apparent power of what generates nothing": () =>
    s.limitsFor({ scheme: "iso-10816-7-2009", machine: "pump 250 kVA 2980 r/min category II" }),
  "machine, a vertical reciprocating compressor": () => machine("vertical reciprocating compressor 300 kW"),
  "machine, a flexible support of a part": () => machine("motor 200 kW 1480 r/min, flexible, A"),
  "machine, a flexible support and a direction apart": () => machine("motor horizontally 200 kW 1480 r/min flexible"),
  "machine, poles and a drive": () => machine("motor 400 kW 4-pole VFD rigid"),
  "machine, poles and a range of line frequency": () => machine("fan 400 kW 16-pole 25 to 50 Hz"),
  "machine, a motor and a range of line frequency": () => machine("motor 132 kW 20 to 60 Hz"),
  "machine, a flexible support beside a direction": () => machine("motor axial on springs"),
  "machine, an apparent power as data": () =>
    s.judge("2 mm/s rms", { type: "generator", power: "500 kVA" as "500 kW" }),
  "parsePoints, a name that holds another quantity": () => s.parsePoints("DE-H 22 mA of 0 to 3 mm/s rms"),
  "machine, a support that may belong to either direction": () => machine("motor rigid horizontally flexible"),
  "machine, a direction that may belong to either support": () => machine("motor horizontally rigid vertically"),
  "machine, a power above its apparent power": () => machine("500 kVA 600 kW"),
  "machine, an apparent power with a decimal comma": () => machine("7,5 kVA"),
  "machine, an apparent power of zero": () => machine("0 kVA"),
  "machine, a bound of a power": () => machine("pump up to 250 kW"),
  "machine, a support that is denied": () => machine("pump not on springs"),
  "machine, a power with a mark": () => machine("pump 250 kW?"),
  "machine, a range of powers that falls": () => machine("400 to 50 kW"),
  "machine, a range of powers that falls, as data": () => machine({ power: { from: "400 kW", to: "50 kW" } }),
  "machine, a range of powers from zero": () => machine("0 to 90 kW"),
  "machine, a range of powers without its end": () => machine({ power: { from: "400 kW" } }),
  "machine, a range of speeds that falls": () => machine("1800 to 900 rpm"),
  "machine, a range of speeds that falls, as data": () => machine({ speed: { from: "1800 r/min", to: "900 r/min" } }),
  "machine, a range of speeds without its end": () => machine({ speed: { from: "1800 r/min" } }),
  "machine, a comma that may be decimal": () => machine("1,480 kW"),
  "machine, a point that may stand between thousands": () => machine("1.480 kW"),
  "machine, a space that may part two numbers": () => machine("pump 1 480 kW"),
  "machine, a power with a decimal comma in a line": () => machine("7,5 kW"),
  "machine, a frame size as metres": () => machine("motor 280 m"),
  "machine, a shaft height of a pump": () => machine("pump 280M"),
  "machine, a height of zero": () => machine({ height: { metres: 0 } }),
  "machine, a height that is no number": () => machine({ height: "tall" }),
  "machine, a frame that is none": () => machine({ frame: "metric" }),
  "machine, nothing but separators": () => machine(" ;, "),
  "machine, new beside a word that says nothing": () => machine("pump 90 kW new premium"),
  "machine, new tied to a word that says nothing": () => machine("pump 90 kW new-premium"),
  "machine, shaft beside a word that says nothing": () => machine("fan 90 kW, shaft kiln"),
  "machine, shaft behind a word that says nothing": () => machine("gear drive, parallel shaft 200 kW"),
  "machine, a compressor of two builds": () => machine("centrifugal compressor, piston"),
  "machine, a place of another kind": () => machine("generator hall pump"),
  "machine, a fact before its driver": () => machine("fan, on springs motor driven"),
  "machine, new behind a word that is not understood": () => machine("fan 400 kW beside new"),
  "machine, a power beside shaft": () => machine("pump 90 kW at the shaft"),
  "machine, a speed beside shaft": () => machine("pump 90 kW, shaft at 2980 r/min"),
  "machine, a word that says nothing": () => machine("magnificent"),
  "machineNotes, a text for what was assumed": () => s.machineNotes({ assumedFacts: "rigid" }),
  "machineNotes, a number among what was assumed": () => s.machineNotes({ assumedFacts: [7] }),
  "machineNotes, a text for the words not understood": () => s.machineNotes({ notUnderstood: "rigd" }),
  "machineNotes, a text among the words not understood": () => s.machineNotes({ notUnderstood: ["rigd"] }),
  "machineNotes, no word": () => s.machineNotes({ notUnderstood: [{ didYouMean: [] }] }),
  "machineNotes, no near words": () => s.machineNotes({ notUnderstood: [{ word: "rigd" }] }),
  "machineNotes, a number among the near words": () =>
    s.machineNotes({ notUnderstood: [{ word: "rigd", didYouMean: [7] }] }),
  "machineNotes, nothing": () => s.machineNotes(null),
  "machine, a part that is no fact": () => machine({ suport: "rigid" }),
  "machine, a support that is none": () => machine({ support: "ridgid" }),
  "machine, a type that is none": () => machine({ type: "toaster" }),
  "machine, true for the support": () => machine({ support: true }),
  "machine, a power without unit": () => machine({ power: 90 }),
  "machine, a speed without unit": () => machine({ speed: 2980 }),
  "machine, true for the power": () => machine({ power: true }),
  "machine, null for the power": () => machine({ power: null }),
  "machine, a power that is no number": () => machine({ power: "much" }),
  "machine, a power with no unit in the text": () => machine({ power: "90" }),
  "machine, a power in a unit that is none": () => machine({ power: "90 foo" }),
  "machine, a power of zero": () => machine({ power: "0 kW" }),
  "machine, a power with a decimal comma": () => machine({ power: "7,5 kW" }),
  "machine, a power of zero as a number": () => machine({ power: { kilowatts: 0 } }),
  "machine, a shaft height that is no number": () => machine({ shaftHeight: "tall" }),
  "machine, a shaft height of zero as a number": () => machine({ shaftHeight: { millimetres: 0 } }),
  "machine, a support against its natural frequency": () => machine("group 2 rigid 1500 r/min natural 26 Hz"),
  "machine, a flexible support against its natural frequency": () =>
    machine("group 2 flexible 1500 r/min natural 60 Hz"),
  "machine, the support missing": () => machine("group 1"),
  "machine, the part missing": () => judged("diesel generating set 400 kW 1500 r/min", "lr-generating-sets"),
  "machine, the category and the power missing": () => judged("pump", "iso-10816-7-2009"),
  "judge, a category left out where nothing is assumed": () =>
    s.judge("2 mm/s rms", "pump 90 kW housing in service", { assume: "nothing" }),
  "machine, two facts missing": () => machine({}),
  "machine, a group that is none": () => machine("group 3 rigid"),
  "machine, a power below the table": () => machine("motor 15 kW rigid"),
  "machine, a speed beside the table's": () => judged("2980 r/min", "iso-10816-2-2009"),
  "machine, a category beside the table's": () =>
    judged("category III", defined({ within: { category: ["I", "II"] } })),
  "machine, a label against its power": () => machine("group 2 400 kW rigid"),
  "machine, a label against its support": () =>
    s.judge("2 mm/s rms", "gear drive 400 kW 1480 r/min class III flexible"),
  "machine, of another table": () => judged("pump rigid BV-3", "iso-14694-2003"),
  "machine, excluded from a table": () => machine("fan 299 kW rigid"),
  "classifier, below zero": () => rule(-1),
  "classifier, infinite": () => rule(Number.POSITIVE_INFINITY),
  "classifier, a level not a number": () => ruleOfLevels(Number.NaN),
  "classifier.index, not a number": () => rule.index(Number.NaN),
  "classifier.array, a text for the list": () => rule.array("1 2"),
  "classifier.array, a list for the zones": () => rule.array(new Float64Array(2), [0, 0]),
  "classifier.array, zones over the readings": () => {
    const readings = new Float64Array(8);
    return rule.array(readings, new Uint8Array(readings.buffer, 4, 8));
  },
  "classifier.array, zones for other readings": () => rule.array(new Float64Array(2), new Uint8Array(1)),
  "classifier.array, below zero": () => rule.array(Float64Array.of(1, -1)),
  "classifier.array, a level infinite": () => ruleOfLevels.array(Float64Array.of(95, Number.POSITIVE_INFINITY)),
  "changeFromBaseline, a scheme without zones": () => changed("iso-14694-2003", "rigid BV-3"),
  "changeFromBaseline, a level": () => changed("iso-10816-3-2009", "group 1 rigid", "95 dB re 1e-9 m/s"),
  "changeFromBaseline, a table without limit B/C": () =>
    s.changeFromBaseline("4 mm/s rms", "2 mm/s rms", { scheme: withCriterion({ limits: { "A/B": 1 } }), machine: {} }),
  "changeFromBaseline, velocity where the shaft is measured": () =>
    changed("iso-7919-3-2009", "motor 3000 r/min", "4 mm/s rms at 50 Hz", "40 um pp at 50 Hz"),
  "classify, a scheme of your own with the id of a built-in one": () =>
    s.classify("1 mm/s rms", { scheme: defined({ id: "ISO-10816-3-2009" }) }),
  "judge, an option there is none of": () => s.judge("2 mm/s rms", "motor 1485 r/min rigid", { scheme: "x" }),
  "judge, another word for what may be assumed": () =>
    s.judge("2 mm/s rms", "motor 1485 r/min rigid", { assume: "lowest limit" }),
  "schemesFor, a place there is none of": () => s.schemesFor("motor 1485 r/min rigid", { place: "both" }),
  "judgePoints, one scheme and several": () =>
    s.judgePoints("A 2 mm/s rms", "group 1 rigid", { scheme: "iso-10816-3-2009", schemes: [] }),
  "defineScheme, nothing": () => s.defineScheme(),
  "defineScheme, a word": () => s.defineScheme("zones"),
  "defineScheme, a part that is none": () => defined({ standrad: "site rule 12" }),
  "defineScheme, a function among the parts": () => defined({ notes: [() => "note"] }),
  "defineScheme, parts within parts without end": () => defined({ notes: [deep] }),
  "defineScheme, a number that is none in a part of a long name": () => withClass({ ["long ".repeat(12)]: Number.NaN }),
  "defineScheme, a number that is none": () => withCriterion({ limits: { "A/B": Number.NaN } }),
  "defineScheme, a kind that is none": () => defined({ kind: "zone" }),
  "defineScheme, a number for the kind": () => defined({ kind: 4 }),
  "defineScheme, no id": () => defined({ id: "" }),
  "defineScheme, a status that is none": () => defined({ status: "old" }),
  "defineScheme, withdrawn for nothing": () => defined({ status: "withdrawn" }),
  "defineScheme, replaced by what is no text": () => defined({ replacedBy: 7 }),
  "defineScheme, a place that is none": () => defined({ place: "bearing" }),
  "defineScheme, a band that is none": () => defined({ band: [10] }),
  "defineScheme, a band of zero": () => defined({ band: [0, 1000] }),
  "defineScheme, a band up to zero": () => defined({ band: [10, 0] }),
  "defineScheme, a band out of order": () => defined({ band: [1000, 10] }),
  "defineScheme, a band of one frequency": () => defined({ band: [10, 10] }),
  "defineScheme, a slow band that is none": () => defined({ slowBand: 600 }),
  "defineScheme, a slow band below zero": () => defined({ slowBand: { below: 0, band: [2, 1000] } }),
  "defineScheme, a slow band with a part that is none": () =>
    defined({ slowBand: { below: 600, band: [2, 1000], to: 600 } }),
  "defineScheme, a slow band with a band that is none": () => defined({ slowBand: { below: 600, band: [2] } }),
  "defineScheme, a part of another name": () => defined({ orientation: "horizontal" }),
  "defineScheme, one note": () => defined({ notes: "as agreed" }),
  "defineScheme, a note that is no text": () => defined({ notes: [7] }),
  "defineScheme, machines that are none": () => defined({ machines: ["toaster"] }),
  "defineScheme, one exclusion": () => defined({ exclusions: ["fans"] }),
  "defineScheme, an exclusion without reason": () => defined({ exclusions: [{ when: { type: "fan" } }] }),
  "defineScheme, an exclusion with a part that is none": () =>
    defined({ exclusions: [{ when: { type: "fan" }, because: "too small" }] }),
  "defineScheme, an exclusion of no machine": () => defined({ exclusions: [{ reason: "too small" }] }),
  "defineScheme, asks for what is no fact": () => defined({ ask: ["colour"] }),
  "defineScheme, meanings that are none": () => defined({ meanings: "group" }),
  "defineScheme, a meaning that is no text": () => defined({ meanings: { group: 1 } }),
  "defineScheme, defaults": () => defined({ defaults: { support: "rigid" } }),
  "defineScheme, informative as a word": () => defined({ informative: "yes" }),
  "defineScheme, a meaning of the peak there is none of": () => defined({ peakMeans: "derived" }),
  "defineScheme, a meaning of the peak that the limits contradict": () => defined({ peakMeans: "true" }),
  "defineScheme, byContract as a word": () => defined({ byContract: "yes" }),
  "defineScheme, conditions that are none": () => defined({ within: "all" }),
  "defineScheme, a condition on what is no fact": () => defined({ within: { colour: "red" } }),
  "defineScheme, a range that is none": () => defined({ within: { power: 15 } }),
  "defineScheme, a bound that is none": () => defined({ within: { power: { over: 15 } } }),
  "defineScheme, a bound that is no number": () => defined({ within: { power: { above: "15 kW" } } }),
  "defineScheme, one of no numbers": () => defined({ within: { speed: { oneOf: [] } } }),
  "defineScheme, one of a word": () => defined({ within: { speed: { oneOf: ["1500"] } } }),
  "defineScheme, a range out of order": () => defined({ within: { power: { above: 300, to: 15 } } }),
  "defineScheme, a range with two upper bounds": () => defined({ within: { power: { to: 300, below: 400 } } }),
  "defineScheme, a range that its lower bound leaves empty": () =>
    defined({ within: { power: { above: 15, to: 15 } } }),
  "defineScheme, a range that its upper bound leaves empty": () =>
    defined({ within: { power: { from: 15, below: 15 } } }),
  "defineScheme, no label": () => defined({ within: { support: [] } }),
  "defineScheme, a label that is none": () => defined({ within: { support: "ridgid" } }),
  "defineScheme, a label that is no text": () => defined({ within: { group: [1] } }),
  "defineScheme, a label of spaces": () => defined({ within: { group: " " } }),
  "defineScheme, a number among labels that are known": () => defined({ within: { support: ["rigid", 7] } }),
  "defineScheme, grades for zones": () => defined({ grades: ["good", "bad"] }),
  "defineScheme, no grades": () => grades(undefined),
  "defineScheme, a grade without name": () => grades(["good", ""]),
  "defineScheme, one grade": () => grades(["good"]),
  "defineScheme, two grades of one name": () => grades(["good", "good"]),
  "defineScheme, a grade that is a whole number": () => grades(["good", "11"]),
  "defineScheme, a limit above the worst grade": () =>
    defined({
      kind: "grades",
      grades: ["good", "bad"],
      classes: [{ criteria: [{ ...criterion, limits: { good: 1, bad: 2 } }] }],
    }),
  "defineScheme, no classes": () => defined({ classes: [] }),
  "defineScheme, a class that is none": () => defined({ classes: ["I"] }),
  "defineScheme, a class with a part that is none": () => withClass({ name: "I" }),
  "defineScheme, a class with a note that is no text": () => withClass({ note: 7 }),
  "defineScheme, a class by what is no fact": () => withClass({ by: { colour: "red" } }),
  "defineScheme, a class without criteria": () => withClass({ criteria: [] }),
  "defineScheme, a class with limits of other names": () =>
    withClass({ criteria: [criterion, { ...criterion, as: "um pp", limits: { "A/B": 20 } }] }),
  "defineScheme, a class with a limit that one criterion has as nothing": () =>
    withClass({ criteria: [criterion, { ...criterion, as: "um pp", limits: { ...criterion.limits, "C/D": null } }] }),
  "defineScheme, two classes for one machine": () =>
    defined({ classes: [{ criteria: [criterion] }, { named: { group: "1" }, criteria: [criterion] }] }),
  "defineScheme, a last class for any machine": () =>
    defined({
      classes: [{ named: { group: "1" } }, { named: { group: "2" } }, {}].map((one) => ({
        ...one,
        criteria: [criterion],
      })),
    }),
  "defineScheme, a criterion that is none": () => withClass({ criteria: [4.5] }),
  "defineScheme, a criterion in no type": () => withCriterion({ as: undefined }),
  "defineScheme, a criterion in another spelling": () => withCriterion({ as: "ips pk" }),
  "defineScheme, a criterion in decibels": () => withCriterion({ as: "dB re 1e-9 m/s" }),
  "defineScheme, limits that are none": () => withCriterion({ limits: [1, 2, 4] }),
  "defineScheme, a limit of another kind": () => withCriterion({ limits: { alarm: 4 } }),
  "defineScheme, no limit": () => withCriterion({ limits: {} }),
  "defineScheme, a limit of zero": () => withCriterion({ limits: { "A/B": 0 } }),
  "defineScheme, a limit that is a word": () => withCriterion({ limits: { "A/B": "low" } }),
  "defineScheme, a law of speed of nothing": () => withCriterion({ limits: { "A/B": { rootOf: 0 } } }),
  "defineScheme, a law of speed up to nothing": () => withCriterion({ limits: { "A/B": { rootOf: 1, atMost: 0 } } }),
  "defineScheme, a law of speed with a part that is none": () =>
    withCriterion({ limits: { "A/B": { rootOf: 1, upTo: 2 } } }),
  "defineScheme, limits out of order": () => withCriterion({ limits: { "A/B": 2, "B/C": 1 } }),
  "defineScheme, a number and a law of speed": () => withCriterion({ limits: { "A/B": 1, "B/C": { rootOf: 12000 } } }),
  "defineScheme, laws of speed that stop out of order": () =>
    withCriterion({ limits: { "A/B": { rootOf: 1, atMost: 5 }, "B/C": { rootOf: 4, atMost: 3 } } }),
  "defineScheme, no source": () => withCriterion({ source: undefined }),
  "defineScheme, a source that is none": () => withCriterion({ source: "site rule 12" }),
  "defineScheme, a source without title": () => withCriterion({ source: { provenance: "memory" } }),
  "defineScheme, a source with a title that is no text": () =>
    withCriterion({ source: { title: 7, provenance: "memory" } }),
  "defineScheme, a source known in no way": () => withCriterion({ source: { title: "site rule 12" } }),
  "defineScheme, a source with a part that is none": () =>
    withCriterion({ source: { ...source, author: "the works" } }),
  "defineScheme, sources that are none": () => withCriterion({ limitSources: "site rule 12" }),
  "defineScheme, a source for a limit that is none": () => withCriterion({ limitSources: { alarm: source } }),
  "defineScheme, a source of one limit that is none": () => withCriterion({ limitSources: { "A/B": "rule 12" } }),
  "defineScheme, ceilings that are none": () => withCriterion({ ceilings: 9 }),
  "defineScheme, ceilings with a part that is none": () =>
    withCriterion({ ceilings: { alarm: 5, trip: 9, stop: 12, source } }),
  "defineScheme, a ceiling of zero for the alarm": () => withCriterion({ ceilings: { alarm: 0, trip: 9, source } }),
  "defineScheme, a ceiling of zero for the trip": () => withCriterion({ ceilings: { alarm: 5, trip: 0, source } }),
  "defineScheme, ceilings without source": () => withCriterion({ ceilings: { alarm: 5, trip: 9 } }),
  "defineScheme, a criterion with a band that is none": () => withCriterion({ band: [10] }),
  "defineScheme, a criterion that applies to what is no fact": () => withCriterion({ when: { colour: "red" } }),
  "defineScheme, a criterion that applies by power": () => withCriterion({ when: { power: { above: 15 } } }),
  "schemes, of no list": () => s.selectSchemes("pump", 7),
  "schemes to count, of no list": () => s.countLimits(7),
};

holdWording("severity", { ...cases, ...confirmRefusals, ...exactRefusals });
