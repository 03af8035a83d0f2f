package sandslurry.report.section;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.PumpInState;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.Design;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** What the report says of each pump in each state, and of its suction. */
record PumpsInStatesSection(Design design, ServiceResult result, Page page)
    implements SectionWriter {
  private void pumps(List<PumpInState> pumps) {
    heading(1, "Pumps in the states");
    List<PumpInState> shown = outermost(pumps);
    tableOf(
        shown,
        List.of(
            Column.text("state", at -> at.state().name()),
            Column.text("pump", at -> at.pump().name()),
            Column.of("flow rate", Kind.FLOW, at -> at.pump().flowM3ps()),
            Column.of("head", Kind.HEAD, at -> at.pump().headM()),
            Column.of("efficiency", Kind.PERCENT, at -> at.pump().efficiency()),
            Column.of("shaft power", Kind.POWER, at -> at.pump().shaftW()),
            Column.maybe("of BEP flow rate", Kind.PERCENT, PumpsInStatesSection::ofBest),
            Column.text("region", at -> region(at.pump()))));
    if (shown.size() < pumps.size()) {
      paragraph(
          "Each pump in its first state, where it runs farthest below and above its BEP, and at its"
              + " greatest shaft power.");
    }
    List<PumpInState> suctions =
        pumps.stream().filter(at -> at.pump().suction().isPresent()).toList();
    if (!suctions.isEmpty()) {
      heading(1, "Suction");
      tableOf(
          closest(suctions),
          List.of(
              Column.text("state", at -> at.state().name()),
              Column.text("pump", at -> at.pump().name()),
              suction("static suction head", Kind.HEAD, SuctionPoint::floodM),
              suction("friction", Kind.HEAD, SuctionPoint::lossM),
              suction("acceleration", Kind.HEAD, SuctionPoint::accelerationM),
              suction("NPSH available", Kind.HEAD, SuctionPoint::availableM),
              Column.maybe(
                  "required", Kind.HEAD, at -> at.pump().suction().orElseThrow().requiredM()),
              suction("velocity", Kind.VELOCITY, SuctionPoint::velocityMps),
              Column.maybe(
                  "required velocity",
                  Kind.VELOCITY,
                  at -> at.pump().suction().orElseThrow().toPassMps()),
              Column.text("sand", at -> at.pump().suction().orElseThrow().severity().name())));
      paragraph(
          "Each pump in its first state and where NPSH and suction velocity are closest. Heads are"
              + " of slurry. NPSH required is the maker's. The design needs the greater of 1.5"
              + " times that and that plus "
              + show(Kind.HEAD, 1)
              + ", because of sand and gas (from memory, unverified), or more at high suction"
              + " energy."
              + suctionSpeeds(pumps));
    }
  }

  void write() {
    List<PumpInState> pumps = result.pumps();
    boolean shown =
        design.service().suction().isPresent()
            || result.states().stream().anyMatch(StateResult::named)
            || pumps.stream().anyMatch(at -> at.point().pumps().size() > 1);
    if (shown && !pumps.isEmpty()) {
      pumps(pumps);
    }
  }

  /** Each pump in its first state, at the ends of its flow rates, and at its greatest power. */
  private static List<PumpInState> outermost(List<PumpInState> pumps) {
    Comparator<PumpInState> flow = Comparator.comparingDouble(at -> at.pump().flowM3ps());
    Comparator<PumpInState> power = Comparator.comparingDouble(at -> at.pump().shaftW());
    return ofEach(
        pumps,
        its ->
            List.of(
                its.get(0),
                Collections.min(its, flow),
                Collections.max(its, flow),
                Collections.max(its, power)));
  }

  private static List<PumpInState> ofEach(
      List<PumpInState> pumps, UnaryOperator<List<PumpInState>> some) {
    return pumps.stream()
        .map(at -> at.pump().name())
        .distinct()
        .flatMap(
            name ->
                some
                    .apply(pumps.stream().filter(at -> at.pump().name().equals(name)).toList())
                    .stream()
                    .distinct())
        .toList();
  }

  /** Each pump in its first state and in those that are closest to a limit. */
  private static List<PumpInState> closest(List<PumpInState> suctions) {
    return ofEach(
        suctions,
        its ->
            List.of(
                its.get(0),
                least(its, PumpsInStatesSection::head),
                least(its, PumpsInStatesSection::velocity)));
  }

  private static PumpInState least(List<PumpInState> its, ToDoubleFunction<SuctionPoint> share) {
    return its.stream()
        .min(Comparator.comparingDouble(at -> share.applyAsDouble(at.pump().suction().get())))
        .orElseThrow();
  }

  private static double head(SuctionPoint point) {
    return point.requiredM().isPresent()
        ? point.availableM() / point.margin().neededM(point.requiredM().getAsDouble())
        : point.availableM();
  }

  private static double velocity(SuctionPoint point) {
    return point.toPassMps().isPresent()
        ? point.velocityMps() / point.toPassMps().getAsDouble()
        : Double.MAX_VALUE;
  }

  private String suctionSpeeds(List<PumpInState> pumps) {
    Map<String, String> speeds = new LinkedHashMap<>();
    for (PumpInState at : pumps) {
      at.pump()
          .suction()
          .flatMap(SuctionPoint::inlet)
          .ifPresent(
              inlet ->
                  speeds.putIfAbsent(
                      at.pump().name(),
                      at.pump().name()
                          + " "
                          + show(Kind.NUMBER, inlet.specificSpeed())
                          + ", suction energy "
                          + inlet.energy().grade().words()));
    }
    return speeds.isEmpty()
        ? ""
        : " Suction specific speed at the best point, metric: "
            + String.join("; ", speeds.values())
            + ".";
  }

  private static OptionalDouble ofBest(PumpInState at) {
    PumpPoint pump = at.pump();
    return pump.region().stream()
        .mapToDouble(region -> pump.flowM3ps() / region.bestFlowM3ps())
        .findFirst();
  }

  private static String region(PumpPoint pump) {
    return pump.flowM3ps() == 0
        ? "shut"
        : pump.region()
            .map(r -> r.place(pump.flowM3ps()).words().replaceAll("^in the | region$", ""))
            .orElse("-");
  }

  private static Column<PumpInState> suction(
      String label, Kind<?> kind, ToDoubleFunction<SuctionPoint> si) {
    return Column.of(label, kind, at -> si.applyAsDouble(at.pump().suction().orElseThrow()));
  }
}
