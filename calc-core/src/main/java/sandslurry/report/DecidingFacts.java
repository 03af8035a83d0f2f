package sandslurry.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineResult.JudgedRun;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.PumpInState;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.design.Design;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.profile.HydraulicProfile;
import sandslurry.separation.lane.LaneCycle;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What decides a line, its pump and its lane, the closest first. */
final class DecidingFacts {
  private final Assessment assessment;
  private final Design design;
  private final UnitSystem units;
  private final List<Deciding> facts = new ArrayList<>();

  private DecidingFacts(Assessment assessment) {
    this.assessment = assessment;
    this.design = assessment.design();
    this.units = design.units();
  }

  /** Of a whole design, with those of each of several lines. */
  static List<Deciding> of(Assessment assessment) {
    List<Deciding> all = new ArrayList<>(own(assessment));
    assessment.lines().forEach((name, line) -> own(line).forEach(fact -> all.add(fact.of(name))));
    all.sort(Comparator.comparingDouble(Deciding::closeness));
    return List.copyOf(all);
  }

  /** What is not kept, else what governs whether a line carries its sand, else what is closest. */
  static Optional<Deciding> governing(Assessment line) {
    DecidingFacts sand = new DecidingFacts(line);
    line.line().filter(result -> !result.states().isEmpty()).ifPresent(sand::velocity);
    List<Deciding> all = own(line, true);
    return all.stream()
        .filter(fact -> fact.closeness() < 0)
        .findFirst()
        .or(() -> sand.facts.stream().findFirst())
        .or(() -> all.stream().findFirst());
  }

  /** Without those of several lines. */
  static List<Deciding> own(Assessment assessment) {
    return own(assessment, false);
  }

  /** In brief for a row of many: of the duty point its flow rate alone. */
  private static List<Deciding> own(Assessment assessment, boolean brief) {
    DecidingFacts all = new DecidingFacts(assessment);
    assessment.line().ifPresent(all::line);
    assessment.pump().flatMap(PumpResult::governing).ifPresent(duty -> all.duty(duty, brief));
    all.service(assessment.service());
    all.lane();
    assessment.plant().flatMap(PlantResult::profile).ifPresent(all::fall);
    assessment
        .plant()
        .ifPresent(
            plant ->
                plant
                    .gravity()
                    .forEach((stream, run) -> all.gravity("by gravity, \"" + stream + "\"", run)));
    all.facts.sort(Comparator.comparingDouble(Deciding::closeness));
    return List.copyOf(all.facts);
  }

  private String show(Kind<?> kind, double si) {
    return units.show(kind, si);
  }

  private void line(LineResult line) {
    if (line.states().isEmpty()) {
      return;
    }
    velocity(line);
    workingPressure(line);
    wear(line);
    column(line);
  }

  /** Of all runs, flow rates, temperatures and liquors judged, the one with the least left. */
  private void velocity(LineResult line) {
    Stream<Deciding> described = velocities(line, "");
    Stream<Deciding> scatter =
        assessment.band().stream()
            .flatMap(
                band ->
                    Stream.concat(
                        velocities(band.thinner().line().orElseThrow(), ", thinner liquor"),
                        velocities(band.thicker().line().orElseThrow(), ", thicker liquor")));
    Stream.concat(described, scatter)
        .min(Comparator.comparingDouble(Deciding::closeness))
        .ifPresent(facts::add);
  }

  private Stream<Deciding> velocities(LineResult line, String liquor) {
    return line.worst().stream()
        .flatMap(
            run ->
                velocity(run, liquor + (line.worst().size() == 1 ? "" : ", " + run.run()))
                    .stream());
  }

  private Optional<Deciding> velocity(JudgedRun run, String where) {
    String at = at(run.flowCase()) + warmth(run) + where;
    if (run.regime() == Regime.LAMINAR && run.carriage().isPresent()) {
      SandCarriage carriage = run.carriage().get();
      String what = "sand on the floor (laminar) at the " + at;
      String actual = show(Kind.PERCENT, carriage.floorShare());
      String tolerated = show(Kind.PERCENT, carriage.toleratedShare()) + " tolerated";
      return Optional.of(
          run.severity() == Severity.PASS
              ? Deciding.said(what, actual, tolerated, "sand carried")
              : Deciding.amiss(
                  what,
                  actual,
                  tolerated,
                  switch (carriage.support()) {
                    case SLIDING_BED -> "slides along";
                    case SLOW_TO_SETTLE, CARRIED_BY_YIELD_STRESS -> "not sure";
                    default -> "sand settles";
                  }));
    }
    return run.deposition()
        .map(
            judged -> {
              double turbulent =
                  run.regime() == Regime.TRANSITIONAL
                      ? run.carriage().orElseThrow().turbulentAboveMps()
                      : 0;
              double needed = Math.max(judged.velocityToPassMps(), turbulent);
              return Deciding.atLeast(
                  "velocity at the " + at,
                  show(Kind.VELOCITY, judged.velocityMps()),
                  judged.velocityMps(),
                  show(Kind.VELOCITY, needed)
                      + (needed > judged.velocityToPassMps() ? " for turbulent flow" : " required"),
                  needed);
            });
  }

  private String warmth(JudgedRun run) {
    return run.temperatureK().isEmpty()
        ? ""
        : ", " + show(Kind.TEMPERATURE, run.temperatureK().getAsDouble());
  }

  private static String at(FlowCase flowCase) {
    return flowCase == FlowCase.DUTY ? "duty point" : flowCase.words() + " flow rate";
  }

  private void workingPressure(LineResult line) {
    double warmest = Materials.warmestK(design, assessment.carrier());
    List<RunSpec> runs = design.oneLine().route().runs();
    Deciding closest = null;
    for (LineState state : line.judged()) {
      for (int i = 0; i < state.runs().size(); i++) {
        OptionalDouble rating = runs.get(i).ratingPa(warmest);
        if (rating.isEmpty()) {
          continue;
        }
        double most = state.runs().get(i).pressures().greatestPa();
        double allowed = design.criteria().allowedPa(rating.getAsDouble());
        Deciding one =
            Deciding.atMost(
                "working pressure" + (runs.size() == 1 ? "" : ", " + runs.get(i).name()),
                show(Kind.PRESSURE, most),
                most,
                show(Kind.PRESSURE, allowed) + " allowed",
                allowed);
        if (closest == null || one.closeness() < closest.closeness()) {
          closest = one;
        }
      }
    }
    if (closest != null) {
      facts.add(closest);
    }
  }

  /** Only where it is above its limit. */
  private void wear(LineResult line) {
    double limit = design.criteria().wearVelocityMps();
    List<RunSpec> runs = design.oneLine().route().runs();
    List<Deciding> over = new ArrayList<>();
    for (LineState state : line.judged()) {
      for (int i = 0; i < runs.size(); i++) {
        double velocity = state.runs().get(i).velocityMps();
        if (state.runs().get(i).deposition().isPresent() && velocity > limit) {
          over.add(
              Deciding.atMost(
                  "velocity at the "
                      + at(state.flowCase())
                      + (runs.size() == 1 ? "" : ", " + runs.get(i).name()),
                  show(Kind.VELOCITY, velocity),
                  velocity,
                  show(Kind.VELOCITY, limit) + " for wear",
                  limit));
        }
      }
    }
    over.stream().min(Comparator.comparingDouble(Deciding::closeness)).ifPresent(facts::add);
  }

  /** Only where the liquid column breaks. */
  private void column(LineResult line) {
    double boils = assessment.carrier().boilsBelowPa();
    line.judged().stream()
        .flatMap(state -> state.runs().stream())
        .mapToDouble(run -> run.pressures().leastPa())
        .filter(least -> least < boils)
        .min()
        .ifPresent(
            least ->
                facts.add(
                    Deciding.amiss(
                        "lowest pressure, at a high point",
                        show(Kind.PRESSURE, least),
                        show(Kind.PRESSURE, boils) + ", where vapour forms",
                        "column breaks")));
  }

  private void duty(PumpResult.Duty duty, boolean brief) {
    FlowSpec flow = design.oneLine().flow();
    double there = duty.flowM3ps();
    double least = flow.minimumM3ps();
    double most = flow.maximumM3ps();
    String actual =
        show(Kind.FLOW, there)
            + (brief
                ? ""
                : " at "
                    + head(duty.headM())
                    + ", "
                    + units.show(Kind.POWER, duty.shaftW())
                    + " at the shaft");
    String range = units.showSpan(Kind.FLOW, least, most);
    facts.add(
        there < least || there > most
            ? Deciding.amiss("duty point", actual, range, there < least ? "below" : "above")
            : Deciding.said("duty point", actual, range, "within"));
  }

  /** The head at the duty point, with its range over the models of head loss. */
  private String head(double headM) {
    return assessment
        .line()
        .flatMap(line -> line.at(FlowCase.DUTY))
        .map(state -> state.headByModels())
        .map(range -> units.show(Kind.HEAD, headM, range.low(), range.high()))
        .orElseGet(() -> units.show(Kind.HEAD, headM));
  }

  private void service(ServiceResult service) {
    service.governing().ifPresent(state -> governing(state));
    waterHammer(service.surges());
    npsh(service.pumps());
    motor(service.pumps());
    service.stop().ifPresent(this::restart);
    service.gravityRun().ifPresent(run -> gravity("in the gravity pipe", run));
    service.screw().ifPresent(this::screw);
  }

  /** The worst of the states beside the flow rates that every line is judged at. */
  private void governing(StateResult state) {
    if (state.point().isEmpty()) {
      return;
    }
    boolean one = assessment.line().stream().flatMap(l -> l.states().stream()).count() > 0;
    boolean listed =
        one
            && assessment.line().orElseThrow().states().stream()
                .anyMatch(s -> state.name().startsWith(s.flowCase().words()));
    StateResult.Point point = state.point().get();
    if (listed || point.worst().regime() == Regime.LAMINAR) {
      return;
    }
    String what = "velocity in the state \"" + state.name() + "\"";
    String actual = show(Kind.VELOCITY, point.worst().velocityMps());
    if (point.worst().regime() == Regime.TRANSITIONAL && point.mixture().sandFraction() > 0) {
      facts.add(Deciding.amiss(what, actual, "turbulent flow needed", "transitional"));
      return;
    }
    if (point.worst().toPassMps().isEmpty()) {
      return;
    }
    facts.add(
        Deciding.atLeast(
            what,
            actual,
            point.worst().velocityMps(),
            show(Kind.VELOCITY, point.worst().toPassMps().getAsDouble()) + " required",
            point.worst().toPassMps().getAsDouble()));
  }

  private void waterHammer(List<SurgeResult> surges) {
    surges.stream()
        .filter(s -> s.ratingPa().isPresent())
        .map(
            s ->
                Deciding.atMost(
                    "water hammer, " + (s.slow().isPresent() ? "stop as given" : "sudden stop"),
                    show(Kind.PRESSURE, s.workingPa() + s.judgedPa()),
                    s.workingPa() + s.judgedPa(),
                    show(Kind.PRESSURE, s.ratingPa().getAsDouble()) + " rated",
                    s.ratingPa().getAsDouble()))
        .min(Comparator.comparingDouble(Deciding::closeness))
        .ifPresent(facts::add);
  }

  private void npsh(List<PumpInState> pumps) {
    pumps.stream()
        .flatMap(p -> p.pump().suction().stream())
        .filter(s -> s.requiredM().isPresent())
        .min(Comparator.comparingDouble(DecidingFacts::npshLeft))
        .ifPresent(
            s -> {
              double needed = s.margin().neededM(s.requiredM().getAsDouble());
              facts.add(
                  Deciding.atLeast(
                      "NPSH available",
                      show(Kind.HEAD, s.availableM()),
                      s.availableM(),
                      show(Kind.HEAD, needed) + " with margin",
                      needed));
            });
  }

  private static double npshLeft(SuctionPoint s) {
    return s.availableM() / s.margin().neededM(s.requiredM().getAsDouble());
  }

  private void motor(List<PumpInState> pumps) {
    pumps.stream()
        .filter(p -> p.pump().motor().isPresent())
        .map(
            p -> {
              double allowed = p.pump().motor().get().bearsW();
              return Deciding.atMost(
                  "shaft power, " + p.pump().name(),
                  show(Kind.POWER, p.pump().shaftW()),
                  p.pump().shaftW(),
                  show(Kind.POWER, allowed) + " of the motor",
                  allowed);
            })
        .min(Comparator.comparingDouble(Deciding::closeness))
        .ifPresent(facts::add);
  }

  private void restart(StopResult stop) {
    if (design.pump().isEmpty()) {
      return;
    }
    String what = stop.lies() ? "restart over a settled bed" : "restart after a rest";
    OptionalDouble most = stop.mostPa();
    String range =
        most.isPresent()
            ? units.showSpan(Kind.PRESSURE, stop.leastPa(), most.getAsDouble())
            : show(Kind.PRESSURE, stop.leastPa()) + " or more, beyond any pump";
    String available = show(Kind.PRESSURE, stop.pressures().availablePa()) + " available";
    facts.add(
        switch (stop.start()) {
          case NEVER -> Deciding.amiss(what, range, available, "does not start");
          case UNCERTAIN -> Deciding.said(what, range, available, "uncertain");
          case SURE -> Deciding.said(what, range, available, "starts");
        });
  }

  /** A line by gravity at its gravest time. */
  private void screw(ServiceResult.Screw screw) {
    facts.add(
        Deciding.atLeast(
            "capacity of the screw conveyor",
            show(Kind.FLOW, screw.capacityM3ps()),
            screw.capacityM3ps(),
            show(Kind.FLOW, screw.loadM3ps()) + " to convey",
            screw.loadM3ps()));
  }

  private void gravity(String where, GravityRun run) {
    run.worst()
        .filter(hour -> hour.sand().isPresent())
        .map(
            hour ->
                Deciding.atLeast(
                    "velocity " + where,
                    show(Kind.VELOCITY, hour.flow().velocityMps()),
                    hour.flow().velocityMps(),
                    show(Kind.VELOCITY, hour.sand().get().requiredMps()) + " required",
                    hour.sand().get().requiredMps()))
        .ifPresent(facts::add);
  }

  /** Of all streams that run by gravity, the one with the least fall left. */
  private void fall(HydraulicProfile profile) {
    profile.falls().stream()
        .filter(fall -> fall.need().isPresent() || fall.backsUp())
        .min(Comparator.comparingDouble(fall -> fall.availableM() - fall.neededM()))
        .map(
            fall -> {
              String what = "fall of \"" + fall.stream() + "\"";
              String available = show(Kind.LENGTH, fall.availableM());
              return fall.backsUp()
                  ? Deciding.amiss(what, available, "some", "backs up")
                  : Deciding.atLeast(
                      what,
                      available,
                      fall.availableM(),
                      show(Kind.LENGTH, fall.neededM()) + " needed",
                      fall.neededM());
            })
        .ifPresent(facts::add);
  }

  private void lane() {
    assessment
        .lane()
        .ifPresent(
            lane -> {
              double wanted = design.criteria().sandCapture();
              LaneCycle cycle = lane.cycle();
              double average = cycle.likely().meanRecovery();
              double last = cycle.likely().lastRecovery();
              double cautious = cycle.cautious().meanRecovery();
              facts.add(
                  new Deciding(
                      "sand kept by the lane, average and just before cleaning",
                      units.number(Kind.PERCENT, average)
                          + units.ends(Kind.PERCENT, cautious, cycle.hopeful().meanRecovery())
                          + " and "
                          + show(Kind.PERCENT, last),
                      show(Kind.PERCENT, wanted) + " wanted",
                      OptionalDouble.of(Math.min(last, cautious) / wanted - 1),
                      cycle.keeps(wanted) ? "met" : average >= wanted ? "uncertain" : "short",
                      ""));
            });
  }
}
