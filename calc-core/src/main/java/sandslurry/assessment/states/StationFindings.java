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
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.suction.SuctionEnergy;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of the rotodynamic pumps of a station, one by one. */
public final class StationFindings extends FindingWriter {
  /**
   * Suction specific speed, metric, above which pumps tend to be less reliable: 11 000 US over 51.6
   * (The Practical Pumping Handbook, page 62, read).
   */
  private static final double RELIABLE_SUCTION_SPEED = 213;

  private final Design design;
  private final ServiceResult result;

  /**
   * The pump station that is judged.
   *
   * @param design the design
   * @param result states and pumps as the assessment shows them
   */
  public StationFindings(Design design, ServiceResult result) {
    super(design.units());
    this.design = design;
    this.result = result;
  }

  /**
   * Findings on duty points, flow back through an idle pump, suction specific speed and impellers.
   *
   * @return the findings; empty without rotodynamic pumps
   */
  public List<Finding> all() {
    if (design.pump().orElse(null) instanceof RotodynamicSpec spec) {
      band();
      pushedBack();
      suctionSpeed();
      impellers(spec);
    }
    return findings;
  }

  private void band() {
    Optional<DutyRow> least = result.leastDuty();
    Optional<DutyRow> believed = result.dutyBand().stream().filter(DutyRow::believed).findFirst();
    if (least.isEmpty() || believed.isEmpty() || result.dutyBand().size() < 2) {
      return;
    }
    DutyRow row = least.get();
    String by = by(row);
    String most =
        result.dutyBand().stream()
            .filter(r -> r.flowM3ps().isPresent())
            .max(Comparator.comparingDouble(r -> r.flowM3ps().getAsDouble()))
            .map(r -> show(Kind.FLOW, r.flowM3ps().getAsDouble()) + " " + by(r))
            .orElse("nothing");
    boolean worse = row.severity().compareTo(believed.get().severity()) > 0;
    boolean good = row.severity().compareTo(Severity.PASS) <= 0;
    String why =
        "The duty point goes from "
            + (row.flowM3ps().isPresent()
                ? show(Kind.FLOW, row.flowM3ps().getAsDouble())
                : "no stable flow")
            + " "
            + by
            + " to "
            + most
            + "; it is judged "
            + by(believed.get())
            + "."
            + (row.velocityMps().isPresent()
                ? " At the lowest, the velocity in "
                    + row.run().orElseThrow()
                    + " is "
                    + show(Kind.VELOCITY, row.velocityMps().getAsDouble())
                    + (row.toPassMps().isPresent()
                        ? "; required is " + show(Kind.VELOCITY, row.toPassMps().getAsDouble())
                        : "")
                    + "."
                : "");
    String cure = "";
    if (worse && row.toPassMps().isPresent()) {
      cure =
          "Choose a pump that gives "
              + show(
                  Kind.FLOW,
                  row.flowM3ps().getAsDouble()
                      * row.toPassMps().getAsDouble()
                      / row.velocityMps().getAsDouble())
              + " or more "
              + by
              + " too, or a drive with a higher speed.";
    } else if (worse) {
      cure = "Choose a pump with more head, or a drive with a higher speed.";
    }
    add(
        worse ? Severity.CAUTION : good ? Severity.PASS : Severity.NOTE,
        Topic.PUMP,
        "pump derating",
        good
            ? "By every published derating for sand and viscosity the sand stays in motion."
            : worse
                ? "By another published derating for sand and viscosity the flow rate is lower and"
                    + " the required velocity is not reached."
                : "The deratings for sand and viscosity differ in flow rate, but not in the"
                    + " verdict.",
        why,
        cure);
  }

  private static String by(DutyRow row) {
    List<String> parts = new ArrayList<>();
    row.solids().ifPresent(parts::add);
    if (row.viscousRatio() < 1 || row.viscousEfficiencyRatio() < 1) {
      row.viscosity().ifPresent(v -> parts.add("the viscosity " + v.words()));
    }
    return parts.isEmpty() ? "as in water" : "by " + String.join(" and ", parts);
  }

  private void pushedBack() {
    Map<String, List<String>> states = new LinkedHashMap<>();
    Map<String, PumpPoint> worst = new LinkedHashMap<>();
    for (PumpInState at : result.pumps()) {
      PumpPoint pump = at.pump();
      if (pump.flowM3ps() == 0) {
        states
            .computeIfAbsent(pump.name(), n -> new ArrayList<>())
            .add("\"" + at.state().name() + "\"");
        worst.merge(pump.name(), pump, (a, b) -> a.headM() >= b.headM() ? a : b);
      }
    }
    worst.forEach(
        (name, pump) ->
            add(
                Severity.CAUTION,
                Topic.PUMP,
                name,
                "The other pumps shut this one off: its check valve stays closed.",
                "It is shut off in "
                    + String.join(", ", states.get(name))
                    + ": the others give "
                    + show(Kind.HEAD, pump.headM())
                    + ", and its own head at zero flow is "
                    + show(Kind.HEAD, pump.shutOffM())
                    + ". A pump that runs shut off heats its liquid and may burst.",
                "Do not run it in these states"
                    + (pump.shutOffM() > 0
                        ? ", or raise its speed to "
                            + show(Kind.PERCENT, Math.sqrt(pump.headM() / pump.shutOffM()))
                            + " or more of its present speed."
                        : ".")));
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
            add(
                Severity.NOTE,
                Topic.PUMP,
                name,
                "Suction energy is high: keep this pump near its BEP.",
                "Its suction specific speed is "
                    + show(Kind.NUMBER, inlet.specificSpeed())
                    + " metric; above "
                    + show(Kind.NUMBER, RELIABLE_SUCTION_SPEED)
                    + " (11 000 US) pumps tend to be less reliable. Its suction energy is "
                    + inlet.energy().grade().words()
                    + " (limits from memory, unverified).",
                ""));
  }

  private static boolean worksHard(Inlet inlet) {
    return inlet.specificSpeed() > RELIABLE_SUCTION_SPEED
        || inlet.energy().grade() != SuctionEnergy.Grade.LOW;
  }

  private void impellers(RotodynamicSpec spec) {
    boolean sand =
        result.states().stream()
            .anyMatch(s -> s.point().map(p -> p.sandFraction() > 0).orElse(false));
    List<RunningPump> pumps = new ArrayList<>(spec.pumps());
    spec.spares().forEach(spare -> pumps.add(spec.withSpare(spare).get(0)));
    String borrowed =
        pumps.stream()
            .filter(RunningPump::impellerOfFirst)
            .map(RunningPump::name)
            .collect(Collectors.joining(", "));
    if (sand && spec.impeller().isPresent() && !borrowed.isEmpty()) {
      add(
          Severity.NOTE,
          Topic.PUMP,
          borrowed,
          "The impeller is not given: that of the first pump is used for the derating by solids.",
          "That is " + show(Kind.BORE, Measure.LENGTH.si(spec.impeller().get())) + ".",
          "");
    }
  }
}
