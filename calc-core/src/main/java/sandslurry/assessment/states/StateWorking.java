package sandslurry.assessment.states;

import static sandslurry.correlation.Working.DEFINITION;
import static sandslurry.correlation.Working.in;

import java.util.List;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.correlation.Physics;
import sandslurry.correlation.Working;
import sandslurry.design.Design;
import sandslurry.fact.step.Step;
import sandslurry.material.liquid.Water;
import sandslurry.pump.rotodynamic.WearIndex;
import sandslurry.pump.suction.StandardAtmosphere;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the line in one of its states, with its pumps and their suction. */
public final class StateWorking {
  private StateWorking() {}

  public static List<Step> steps(Design design, StateResult state, Point point) {
    Working w = new Working("state: " + state.name());
    double designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    if (state.asked()) {
      w.step(
          "Q",
          point.driven() ? "flow at which pumps and line meet" : "flow, held at the design flow",
          point.driven() ? "H_pumps(Q) = H_line(Q)" : "Q = Q_design",
          Kind.FLOW,
          point.flowM3ps(),
          point.driven() ? "solved by Brent's method, or by the strokes of a piston pump" : "input",
          in("H", Kind.HEAD, point.headM()),
          in("rho_m", Kind.DENSITY, point.densityKgM3()),
          in("T", Kind.TEMPERATURE, point.temperatureK()));
      w.step(
          "V",
          "velocity in the largest bore of " + point.run() + ", the run that stands worst",
          "V = Q / A",
          Kind.VELOCITY,
          point.velocityMps(),
          DEFINITION,
          in("Q", Kind.FLOW, point.flowM3ps()),
          in("D", Kind.BORE, 2 * Math.sqrt(point.flowM3ps() / (Math.PI * point.velocityMps()))));
    }
    w.step(
        "W",
        "wear against the design flow, lower power",
        "W = (Q / Q_design)^" + WearIndex.LOW_POWER,
        Kind.NUMBER,
        Math.pow(point.flowM3ps() / designFlow, WearIndex.LOW_POWER),
        WearIndex.SOURCE,
        in("Q", Kind.FLOW, point.flowM3ps()),
        in("Q_design", Kind.FLOW, designFlow));
    w.step(
        "W",
        "the same, higher power",
        "W = (Q / Q_design)^" + WearIndex.HIGH_POWER,
        Kind.NUMBER,
        Math.pow(point.flowM3ps() / designFlow, WearIndex.HIGH_POWER),
        "as above");
    for (PumpPoint pump : point.pumps()) {
      pump(w, design, point, pump);
    }
    return w.steps();
  }

  private static void pump(Working w, Design design, Point point, PumpPoint pump) {
    if (pump.flowM3ps() > 0) {
      w.step(
          "P",
          "power at the shaft of " + pump.name(),
          "P = rho_m g Q H / eta",
          Kind.POWER,
          pump.shaftW(),
          DEFINITION,
          in("rho_m", Kind.DENSITY, point.densityKgM3()),
          in("Q", Kind.FLOW, pump.flowM3ps()),
          in("H", Kind.HEAD, Math.max(pump.headM(), 0)),
          in("eta", Kind.NUMBER, pump.efficiency()));
      pump.region()
          .ifPresent(
              region ->
                  w.step(
                      "b",
                      "flow of " + pump.name() + " over that at its best efficiency",
                      "b = Q / Q_best",
                      Kind.PERCENT,
                      pump.flowM3ps() / region.bestFlowM3ps(),
                      "regions of ANSI/HI 9.6.3 by the specific speed n_s; see the theory page",
                      in("n_s", Kind.NUMBER, pump.specificSpeed().getAsDouble()),
                      in("Q", Kind.FLOW, pump.flowM3ps()),
                      in("Q_best", Kind.FLOW, region.bestFlowM3ps())));
    }
    pump.suction().ifPresent(suction -> suction(w, design, point, pump, suction));
  }

  private static void suction(
      Working w, Design design, Point point, PumpPoint pump, SuctionPoint suction) {
    StandardAtmosphere atmosphere = new StandardAtmosphere();
    double altitude = Measure.LENGTH.si(design.service().suction().orElseThrow().altitude());
    double air =
        w.step(
            "p_air",
            "air pressure",
            atmosphere,
            Kind.PRESSURE,
            atmosphere.pressurePa(altitude).value(),
            in("h", Kind.LENGTH, altitude));
    w.step(
        "NPSHa",
        "NPSH available to " + pump.name(),
        "NPSHa = (p_air - p_v)/(rho_m g) + z - h_s - h_a",
        Kind.HEAD,
        suction.availableM(),
        DEFINITION,
        in("p_air", Kind.PRESSURE, air),
        in("p_v", Kind.PRESSURE, Water.vapourPressurePa(point.temperatureK())),
        in("rho_m", Kind.DENSITY, point.densityKgM3()),
        in("g", Kind.NUMBER, Physics.GRAVITY),
        in("z", Kind.HEAD, suction.floodM()),
        in("h_s", Kind.HEAD, suction.lossM()),
        in("h_a", Kind.HEAD, suction.accelerationM()));
    suction
        .inlet()
        .ifPresent(
            inlet ->
                w.step(
                    "S",
                    "suction specific speed of " + pump.name() + ", metric",
                    "S = n Q^0.5 / NPSHr^0.75 at the best point, n in 1/min",
                    Kind.NUMBER,
                    inlet.specificSpeed(),
                    DEFINITION,
                    in("n", Kind.FREQUENCY, inlet.best().speedPs()),
                    in("Q", Kind.FLOW, inlet.best().flowM3ps()),
                    in("NPSHr", Kind.HEAD, inlet.requiredM())));
    if (suction.requiredM().isPresent()) {
      double required = suction.requiredM().getAsDouble();
      w.step(
          "NPSH",
          "NPSH that must be available to " + pump.name(),
          "NPSH = max(R NPSHr, NPSHr + M)",
          Kind.HEAD,
          suction.margin().neededM(required),
          "liquor with sand and gas, wide end of 1.2 to 1.5, from memory, unverified, or more by"
              + " ANSI/HI 9.6.1 for an inlet that works hard; NPSHr by the maker's points, at"
              + " another speed as its square"
              + (suction.viscousRatio() > 1 ? ", times the factor of the thick liquid" : ""),
          in("NPSHr", Kind.HEAD, required),
          in("R", Kind.NUMBER, suction.margin().leastRatio()),
          in("M", Kind.HEAD, suction.margin().leastDifferenceM()));
    }
  }
}
