// Pipe networks as JSON on standard input, their flows and pressures as JSON on standard output, solved by the engine
// of the package epanet-js (a general pipe-network solver). Units in and out are SI: m, Pa, m3/s.
//   in:  [{ density, viscosity, nodes: [{ given? , drawn? }], pipes: [{ from, to, bore, length, roughness, losses, oneWay }],
//           pumps: [{ from, to, curve: [[pressure, flow], …] }] }]      four points or more of a falling line
//   out: { engine, cases: [{ pressures: [], flows: [] }] }  flows of the pipes, then of the pumps
// The engine knows heads of metres, litres a second, bores and roughness in millimetres; its viscosity is one relative
// to water's 1.022e-6 m2/s. Friction by Darcy-Weisbach with its own factor: 64/Re below 2000, Swamee and Jain's explicit
// form above 4000, a cubic between. A pump's points are joined straight.
import {
  FlowUnits,
  HeadLossType,
  LinkProperty,
  LinkType,
  NodeProperty,
  NodeType,
  Option,
  Project,
  Workspace,
} from "epanet-js";
import { readFileSync } from "node:fs";

const gravity = 9.80665, water = 1.022e-6;

function solve(ws, net) {
  const model = new Project(ws);
  model.init("report.rpt", "out.bin", FlowUnits.LPS, HeadLossType.DW);
  const rho_g = net.density * gravity;
  model.setOption(Option.SpViscos, net.viscosity / net.density / water);
  model.setOption(Option.Accuracy, 1e-8);
  model.setOption(Option.Trials, 500);
  net.nodes.forEach((n, i) => {
    const id = model.addNode("n" + i, n.given == null ? NodeType.Junction : NodeType.Reservoir);
    if (n.given == null) model.setJunctionData(id, 0, (n.drawn ?? 0) * 1e3, "");
    else model.setNodeValue(id, NodeProperty.Elevation, n.given / rho_g);
  });
  net.pipes.forEach((p, i) => {
    const id = model.addLink("p" + i, p.oneWay ? LinkType.CVPipe : LinkType.Pipe, "n" + p.from, "n" + p.to);
    model.setPipeData(id, p.length, p.bore * 1e3, p.roughness * 1e3, p.losses);
  });
  (net.pumps ?? []).forEach((p, i) => {
    const name = "c" + i;
    model.addCurve(name);
    const curve = model.getCurveIndex(name);
    p.curve.forEach(([pressure, flow], k) => model.setCurveValue(curve, k + 1, flow * 1e3, pressure / rho_g));
    const id = model.addLink("u" + i, LinkType.Pump, "n" + p.from, "n" + p.to);
    model.setHeadCurveIndex(id, curve);
  });
  model.openH();
  model.initH(11);
  model.runH();
  // Places in its lists shift as more are added, so they are asked for by name now.
  const pressures = net.nodes.map((_, i) => model.getNodeValue(model.getNodeIndex("n" + i), NodeProperty.Head) * rho_g);
  const names = [...net.pipes.map((_, i) => "p" + i), ...(net.pumps ?? []).map((_, i) => "u" + i)];
  const flows = names.map((name) => model.getLinkValue(model.getLinkIndex(name), LinkProperty.Flow) / 1e3);
  model.closeH();
  model.close();
  return { pressures, flows };
}

const ws = new Workspace();
await ws.loadModule();
const cases = JSON.parse(readFileSync(0, "utf8")).map((net) => solve(ws, net));
const lock = JSON.parse(readFileSync(new URL("./package-lock.json", import.meta.url)));
const version = lock.packages["node_modules/epanet-js"].version;
console.log(JSON.stringify({ engine: `epanet-js ${version}, its engine ${ws.version}`, cases }));
