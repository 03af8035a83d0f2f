package sandslurry.assessment.states;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.DutyRow;
import sandslurry.assessment.service.ServiceResult.PumpInState;
import sandslurry.assessment.station.StateResult.Inlet;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.suction.SuctionEnergy;
import sandslurry.units.Kind;

/**
 * Findings on the rotodynamic pumps of a station, one by one.
 *
 * @param design the design
 * @param result states and pumps as the assessment shows them
 * @param findings takes what is found
 */
public record StationFindings(Design design, ServiceResult result, Findings findings)
    implements FindingWriter {
  /**
   * Suction specific speed, metric, above which pumps tend to be less reliable: 11 000 US over 51.6
   * (The Practical Pumping Handbook, page 62, read).
   */
  private static final double RELIABLE_SUCTION_SPEED = 213;

  private static final String DERATING = "pump derating";

  /**
   * Findings on duty points, flow back through an idle pump, suction specific speed and impellers.
   */
  public void all() {
    design
        .pump()
        .flatMap(PumpSpec::rotodynamic)
        .ifPresent(
            spec -> {
              band();
              pushedBack();
              suctionSpeed();
              impellers(spec);
            });
  }

  private void band() {
    Optional<DutyRow> least = result.leastDuty();
    Optional<DutyRow> believed = result.dutyBand().stream().filter(DutyRow::believed).findFirst();
    if (least.isEmpty() || believed.isEmpty() || result.dutyBand().size() < 2) {
      return;
    }
    DutyRow row = least.get();
    DutyRow judged = believed.get();
    Found found;
    if (row.severity().compareTo(judged.severity()) > 0) {
      found =
          found("derating-lowers", Severity.CAUTION, DERATING)
              .cure(row.toPassMps().isPresent() ? "derated-flow" : "derated-head");
    } else if (row.severity().compareTo(Severity.PASS) <= 0) {
      found = found("derating-carries", Severity.PASS, DERATING);
    } else {
      found = found("derating-differs", Severity.NOTE, DERATING);
    }
    band(found, row);
    found.with("judgedBy", units -> by(judged)).add();
  }

  /** The lowest and the highest flow rate of the band, and the velocity at the lowest. */
  private void band(Found found, DutyRow low) {
    found.with("lowBy", units -> by(low));
    result.dutyBand().stream()
        .filter(row -> row.flowM3ps().isPresent())
        .max(Comparator.comparingDouble(row -> row.flowM3ps().getAsDouble()))
        .ifPresentOrElse(
            high ->
                found
                    .with("high", Kind.FLOW, high.flowM3ps().getAsDouble())
                    .why(low.flowM3ps().isPresent() ? "derating" : "derating-stalls"),
            () -> found.why("derating-all-stall"));
    low.flowM3ps().ifPresent(flow -> found.with("low", Kind.FLOW, flow));
    if (low.velocityMps().isPresent()) {
      double velocity = low.velocityMps().getAsDouble();
      double required = low.toPassMps().orElse(velocity);
      found
          .with("run", low.run().orElseThrow())
          .with("velocity", Kind.VELOCITY, velocity)
          .with("required", Kind.VELOCITY, required)
          .with("wanted", Kind.FLOW, low.flowM3ps().orElse(0) * required / velocity)
          .why(low.toPassMps().isPresent() ? "derating-required" : "derating-velocity");
    }
  }

  private static String by(DutyRow row) {
    List<String> parts = new ArrayList<>();
    row.solids().ifPresent(parts::add);
    if (row.viscousRatio() < 1 || row.viscousEfficiencyRatio() < 1) {
      row.viscosity().ifPresent(v -> parts.add("viscosity " + v.words()));
    }
    return parts.isEmpty() ? "as in water" : "(" + String.join("; ", parts) + ")";
  }

  private void pushedBack() {
    result.pumps().stream()
        .filter(at -> at.pump().flowM3ps() == 0)
        .collect(
            Collectors.groupingBy(at -> at.pump().name(), LinkedHashMap::new, Collectors.toList()))
        .forEach(this::pushedBack);
  }

  private void pushedBack(String name, List<PumpInState> states) {
    PumpPoint worst =
        states.stream()
            .map(PumpInState::pump)
            .reduce((a, b) -> a.headM() >= b.headM() ? a : b)
            .orElseThrow();
    found("shut-off", Severity.CAUTION, name)
        .with("states", units -> quoted(states))
        .with("head", Kind.HEAD, worst.headM())
        .with("shutOff", Kind.HEAD, worst.shutOffM())
        .with("speed", Kind.PERCENT, Math.sqrt(worst.headM() / worst.shutOffM()))
        .why("shut-off")
        .cure(worst.shutOffM() > 0 ? "keep-out-or-faster" : "keep-out")
        .add();
  }

  private static String quoted(List<PumpInState> states) {
    return states.stream()
        .map(at -> "\"" + at.state().name() + "\"")
        .collect(Collectors.joining(", "));
  }

  private void suctionSpeed() {
    Map<String, Inlet> high = new LinkedHashMap<>();
    for (PumpInState at : result.pumps()) {
      at.pump()
          .suction()
          .flatMap(SuctionPoint::inlet)
          .filter(StationFindings::worksHard)
          .ifPresent(inlet -> high.putIfAbsent(at.pump().name(), inlet));
    }
    high.forEach(
        (name, inlet) ->
            found("high-suction-energy", Severity.NOTE, name)
                .with("speed", Kind.NUMBER, inlet.specificSpeed())
                .with("reliable", Kind.NUMBER, RELIABLE_SUCTION_SPEED)
                .with("grade", inlet.energy().grade().words())
                .why("high-suction-energy")
                .add());
  }

  private static boolean worksHard(Inlet inlet) {
    return inlet.specificSpeed() > RELIABLE_SUCTION_SPEED
        || inlet.energy().grade() != SuctionEnergy.Grade.LOW;
  }

  private void impellers(RotodynamicSpec spec) {
    boolean sand =
        result.states().stream()
            .anyMatch(s -> s.point().map(p -> p.mixture().sandFraction() > 0).orElse(false));
    List<RunningPump> pumps = new ArrayList<>(spec.pumps());
    spec.spares().forEach(spare -> pumps.add(spec.withSpare(spare).get(0)));
    String borrowed =
        pumps.stream()
            .filter(RunningPump::impellerOfFirst)
            .map(RunningPump::name)
            .collect(Collectors.joining(", "));
    if (sand && spec.impellerM().isPresent() && !borrowed.isEmpty()) {
      found("impeller-not-given", Severity.NOTE, borrowed)
          .with("impeller", Kind.BORE, spec.impellerM().getAsDouble())
          .why("impeller-not-given")
          .add();
    }
  }
}
