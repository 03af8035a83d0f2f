package sandslurry.assessment.states;

import static sandslurry.fact.step.Equation.DEFINITION;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.assessment.station.PumpWorking;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.Design;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Water;
import sandslurry.pump.rotodynamic.WearIndex;
import sandslurry.pump.suction.StandardAtmosphere;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the line in each of its states, with its pumps and their suction. */
public final class StateWorking {
  private static final Equation DRIVEN =
      Equation.search(
          "Q",
          "flow rate at which pumps and line have the same head",
          "flow rates of the pump curve; of a piston pump its strokes",
          Kind.FLOW,
          "solved by Brent's method",
          "H m, rho_m kg/m3, T K");
  private static final Equation HELD =
      Equation.lookup(
          "Q", "flow rate, held by control", "design", Kind.FLOW, "input", "H m, rho_m kg/m3, T K");
  private static final Equation VELOCITY =
      Equation.of(
          "V_L",
          "velocity in the largest bore of the governing run",
          "Q / (pi D_L^2 / 4)",
          Kind.VELOCITY,
          DEFINITION,
          "Q m3/s, D_L m");
  private static final Equation WEAR =
      Equation.of(
          "W_1",
          "wear against that at the design flow rate, lower power",
          "(Q/Q_design)^" + WearIndex.LOW_POWER,
          Kind.NUMBER,
          WearIndex.SOURCE,
          "Q m3/s, Q_design m3/s");
  private static final Equation MORE_WEAR =
      Equation.of(
          "W_2",
          "wear against that at the design flow rate, higher power",
          "(Q/Q_design)^" + WearIndex.HIGH_POWER,
          Kind.NUMBER,
          WearIndex.SOURCE,
          "Q m3/s, Q_design m3/s");
  private static final Equation REGION =
      Equation.of(
          "b",
          "flow rate over that at best efficiency, regions by ANSI/HI 9.6.3",
          "Q/Q_best",
          Kind.PERCENT,
          "theory page on pumps",
          "Q m3/s, Q_best m3/s");
  private static final Equation VAPOUR =
      Equation.lookup(
          "p_v",
          "vapour pressure of the liquid, absolute",
          "property of water at this temperature",
          Kind.PRESSURE,
          "IAPWS (see the theory page on carrier and sand)",
          "T K");
  private static final Equation AVAILABLE =
      Equation.of(
          "NPSHa",
          "NPSH available",
          "(p_air - p_v)/(rho_m g) + z - max(h_s, 0) - h_a",
          Kind.HEAD,
          DEFINITION,
          "p_air Pa, p_v Pa, rho_m kg/m3, z m, h_s m, h_a m");
  private static final Equation SUCTION_SPEED =
      Equation.of(
          "S",
          "suction specific speed at the best point of the whole impeller, metric",
          "N[1/min] Q_best^0.5 / NPSH_best^0.75",
          Kind.NUMBER,
          DEFINITION,
          "N 1/s, Q_best m3/s, NPSH_best m");
  private static final Equation REQUIRED =
      Equation.lookup(
          "NPSHr",
          "NPSH required in water",
          "the maker's points at this flow rate; at another speed as its square",
          Kind.HEAD,
          "curve of the design",
          "Q m3/s");
  private static final Equation NEEDED =
      Equation.of(
          "NPSH",
          "NPSH that must be available",
          "max(R f_v NPSHr, f_v NPSHr + M)",
          Kind.HEAD,
          "liquor with sand and gas, wide end of 1.2 to 1.5, from memory, unverified, or more by"
              + " ANSI/HI 9.6.1 for an inlet that works hard; f_v the factor of a thick liquid",
          "R, f_v, NPSHr m, M m");

  private StateWorking() {}

  /**
   * Keeps the steps of all states, the gravest first.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param states the states as the assessment shows them
   */
  public static void tell(Trace trace, Design design, List<StateResult> states) {
    List<StateResult> gravestFirst = new ArrayList<>(states);
    gravestFirst.sort(Comparator.comparing(StateResult::severity).reversed());
    for (StateResult state : gravestFirst) {
      state.point().ifPresent(point -> tell(trace, design, state, point));
    }
  }

  private static void tell(Trace trace, Design design, StateResult state, Point point) {
    trace.begin("line in service", state.name());
    double designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    double flow = point.flowM3ps();
    if (state.asked()) {
      trace.step(
          point.driven() ? DRIVEN : HELD,
          flow,
          point.headM(),
          point.densityKgM3(),
          point.temperatureK());
      trace.step(
          VELOCITY,
          point.velocityMps(),
          flow,
          Measure.LENGTH.si(design.route().orElseThrow().run(point.run()).largestBore()));
    }
    trace.step(WEAR, Math.pow(flow / designFlow, WearIndex.LOW_POWER), flow, designFlow);
    trace.step(MORE_WEAR, Math.pow(flow / designFlow, WearIndex.HIGH_POWER), flow, designFlow);
    for (PumpPoint pump : point.pumps()) {
      trace.begin(pump.name() + " in service", state.name());
      pump(trace, design, point, pump);
    }
  }

  private static void pump(Trace trace, Design design, Point point, PumpPoint pump) {
    double flow = pump.flowM3ps();
    if (flow > 0) {
      trace.step(
          PumpWorking.SHAFT_POWER,
          pump.shaftW(),
          point.densityKgM3(),
          flow,
          Math.max(pump.headM(), 0),
          pump.efficiency());
      pump.region()
          .ifPresent(
              region ->
                  trace.step(REGION, flow / region.bestFlowM3ps(), flow, region.bestFlowM3ps()));
    }
    pump.suction().ifPresent(suction -> suction(trace, design, point, pump, suction));
  }

  private static void suction(
      Trace trace, Design design, Point point, PumpPoint pump, SuctionPoint suction) {
    double altitude = Measure.LENGTH.si(design.service().suction().orElseThrow().altitude());
    double air = new StandardAtmosphere().pressurePa(altitude, trace).value();
    double vapour =
        trace.step(VAPOUR, Water.vapourPressurePa(point.temperatureK()), point.temperatureK());
    trace.step(
        AVAILABLE,
        suction.availableM(),
        air,
        vapour,
        point.densityKgM3(),
        suction.floodM(),
        suction.lossM(),
        suction.accelerationM());
    suction
        .inlet()
        .ifPresent(
            inlet ->
                trace.step(
                    SUCTION_SPEED,
                    inlet.specificSpeed(),
                    inlet.best().speedPs(),
                    inlet.best().flowM3ps(),
                    inlet.requiredM()));
    if (suction.requiredM().isPresent()) {
      double required = suction.requiredM().getAsDouble();
      double water = trace.step(REQUIRED, required / suction.viscousRatio(), pump.flowM3ps());
      trace.step(
          NEEDED,
          suction.margin().neededM(required),
          suction.margin().leastRatio(),
          suction.viscousRatio(),
          water,
          suction.margin().leastDifferenceM());
    }
  }
}
