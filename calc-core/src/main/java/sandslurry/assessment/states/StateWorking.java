package sandslurry.assessment.states;

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
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Water;
import sandslurry.pump.rotodynamic.WearIndex;
import sandslurry.pump.suction.StandardAtmosphere;
import sandslurry.units.Kind;

/** The working behind the line in each of its states, with its pumps and their suction. */
public final class StateWorking {
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

  private StateWorking() {}

  /**
   * Keeps the steps of all states, the gravest first.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param states the states as the assessment shows them
   */
  public static void steps(Trace trace, Design design, List<StateResult> states) {
    Sheet sheet = Sheet.of(StateWorking.class, trace);
    List<StateResult> gravestFirst = new ArrayList<>(states);
    gravestFirst.sort(Comparator.comparing(StateResult::severity).reversed());
    for (StateResult state : gravestFirst) {
      state.point().ifPresent(point -> steps(sheet, design, state, point));
    }
  }

  private static void steps(Sheet sheet, Design design, StateResult state, Point point) {
    sheet.begin("line in service", state.name());
    double designFlow = design.oneLine().flow().designM3ps();
    double flow = point.flowM3ps();
    if (state.named()) {
      sheet.step(
          point.driven() ? "driven" : "held",
          flow,
          point.headM(),
          point.mixture().densityKgM3(),
          point.mixture().temperatureK());
      sheet.step(
          "velocity",
          point.worst().velocityMps(),
          flow,
          design.oneLine().route().run(point.worst().run()).largestBoreM());
    }
    sheet.step(WEAR, Math.pow(flow / designFlow, WearIndex.LOW_POWER), flow, designFlow);
    sheet.step(MORE_WEAR, Math.pow(flow / designFlow, WearIndex.HIGH_POWER), flow, designFlow);
    for (PumpPoint pump : point.pumps()) {
      sheet.begin(pump.name() + " in service", state.name());
      pump(sheet, design, point, pump);
    }
  }

  private static void pump(Sheet sheet, Design design, Point point, PumpPoint pump) {
    double flow = pump.flowM3ps();
    if (flow > 0) {
      sheet.step(
          PumpWorking.SHAFT_POWER,
          pump.shaftW(),
          point.mixture().densityKgM3(),
          flow,
          Math.max(pump.headM(), 0),
          pump.efficiency());
      pump.region()
          .ifPresent(
              region ->
                  sheet.step("region", flow / region.bestFlowM3ps(), flow, region.bestFlowM3ps()));
    }
    pump.suction().ifPresent(suction -> suction(sheet, design, point, pump, suction));
  }

  private static void suction(
      Sheet sheet, Design design, Point point, PumpPoint pump, SuctionPoint suction) {
    double altitude = design.service().suction().orElseThrow().altitudeM();
    double air = new StandardAtmosphere().pressurePa(altitude, sheet.trace()).value();
    double vapour =
        sheet.step(
            "vapour",
            Water.vapourPressurePa(point.mixture().temperatureK()),
            point.mixture().temperatureK());
    sheet.step(
        "available",
        suction.availableM(),
        air,
        vapour,
        point.mixture().densityKgM3(),
        suction.floodM(),
        suction.lossM(),
        suction.accelerationM());
    suction
        .inlet()
        .ifPresent(
            inlet ->
                sheet.step(
                    "suction-speed",
                    inlet.specificSpeed(),
                    inlet.best().speedPs(),
                    inlet.best().flowM3ps(),
                    inlet.requiredM()));
    if (suction.requiredM().isPresent()) {
      double required = suction.requiredM().getAsDouble();
      double water = sheet.step("required", required / suction.viscousRatio(), pump.flowM3ps());
      sheet.step(
          "needed",
          suction.margin().neededM(required),
          suction.margin().leastRatio(),
          suction.viscousRatio(),
          water,
          suction.margin().leastDifferenceM());
    }
  }
}
