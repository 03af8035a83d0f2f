package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sandslurry.assessment.plant.CarriedStream;
import sandslurry.design.Design;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.material.liquid.Carriers;
import sandslurry.plant.Stream;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of a line that carries a stream of the plant. */
final class CarriedFindings extends FindingWriter {
  /**
   * The graver of two assessments of one line at different times: by verdict, then by plugging,
   * then by the velocity over that which passes, in the run and at the flow where that is least.
   */
  private static final Comparator<Assessment> GRAVER =
      Comparator.comparing(Assessment::verdict)
          .thenComparing(assessment -> worst(assessment, Topic.PLUGGING))
          .thenComparing(Comparator.comparingDouble(CarriedFindings::margin).reversed());

  private final MixtureSpec.OfStream mixture;
  private final FlowSpec flow;

  CarriedFindings(Design design, MixtureSpec.OfStream mixture) {
    super(design.units());
    this.mixture = mixture;
    this.flow = design.flow().orElseThrow();
  }

  private static double margin(Assessment assessment) {
    return assessment.line().stream()
        .flatMap(line -> line.states().stream())
        .flatMap(state -> state.runs().stream())
        .filter(run -> run.deposition().isPresent())
        .mapToDouble(
            run ->
                Measure.SPEED.si(run.leastVelocity())
                    / run.deposition().orElseThrow().velocityToPassMps())
        .min()
        .orElse(Double.MAX_VALUE);
  }

  /** The time at which the line stands worst. */
  static CarriedStream governing(Map<CarriedStream, Assessment> judged) {
    return judged.entrySet().stream()
        .max(Map.Entry.comparingByValue(GRAVER))
        .orElseThrow()
        .getKey();
  }

  /**
   * Says which state of the stream is shown, what stands worse in another, and whether the line
   * takes what the plant sends.
   *
   * @param modes the stream at every time
   * @param judged the line at every time at which it can be judged
   */
  List<Finding> of(List<CarriedStream> modes, Map<CarriedStream, Assessment> judged) {
    if (!judged.isEmpty()) {
      CarriedStream shown = governing(judged);
      shown(shown, judged);
      for (Topic topic : Topic.values()) {
        worse(topic, shown, judged);
      }
    }
    modes.forEach(this::unknown);
    if (modes.stream().allMatch(mode -> mode.stream().isPresent())) {
      takes(modes);
    }
    return findings;
  }

  private void shown(CarriedStream shown, Map<CarriedStream, Assessment> judged) {
    Stream stream = shown.stream().orElseThrow();
    add(
        Severity.NOTE,
        Topic.DATA,
        "line",
        "The line carries the stream \""
            + mixture.stream()
            + "\" as it is "
            + shown.when()
            + (judged.size() > 1 ? ", where the line is closest to settling." : "."),
        "It holds "
            + show(Kind.PERCENT, stream.sandVolumeShare())
            + " sand by volume in liquor of "
            + show(Kind.PERCENT, stream.totalSolids())
            + " solids"
            + (judged.size() > 1
                ? judged.entrySet().stream()
                    .filter(entry -> entry.getKey() != shown)
                    .map(
                        entry ->
                            "; the verdict is "
                                + entry.getValue().verdict()
                                + " "
                                + entry.getKey().when()
                                + ", with "
                                + show(
                                    Kind.PERCENT,
                                    entry.getKey().stream().orElseThrow().sandVolumeShare())
                                + " and "
                                + show(
                                    Kind.PERCENT,
                                    entry.getKey().stream().orElseThrow().totalSolids()))
                    .collect(Collectors.joining())
                : "")
            + ".",
        "");
  }

  /** No part of the line may look better than it is because another time is shown. */
  private void worse(Topic topic, CarriedStream shown, Map<CarriedStream, Assessment> judged) {
    Severity here = worst(judged.get(shown), topic);
    Severity worst =
        judged.values().stream()
            .map(there -> worst(there, topic))
            .max(Comparator.naturalOrder())
            .orElseThrow();
    if (worst.compareTo(here) <= 0) {
      return;
    }
    List<CarriedStream> times =
        judged.keySet().stream().filter(time -> worst(judged.get(time), topic) == worst).toList();
    CarriedStream first = times.get(0);
    for (Finding finding : judged.get(first).findings()) {
      if (finding.topic() == topic && finding.severity().compareTo(here) > 0) {
        add(
            finding.severity(),
            topic,
            finding.element() + ", " + first.when(),
            finding.what(),
            finding.why()
                + times.stream()
                    .skip(1)
                    .map(
                        time ->
                            " The verdict on "
                                + topic.word()
                                + " is "
                                + worst
                                + " "
                                + time.when()
                                + " too.")
                    .collect(Collectors.joining()),
            finding.cure());
      }
    }
  }

  private static Severity worst(Assessment assessment, Topic topic) {
    return BandFindings.worst(assessment.findings(), topic);
  }

  private void unknown(CarriedStream mode) {
    if (mode.stream().isEmpty()) {
      add(
          Severity.FAIL,
          Topic.PLUGGING,
          "line",
          "The line cannot be judged " + mode.when() + ".",
          "The plant has no steady state there, so nobody knows what the stream carries.",
          "Mend the plant first.");
    } else if (mode.flowM3ps() > 0 && !mode.known()) {
      add(
          Severity.FAIL,
          Topic.PLUGGING,
          "line",
          "The liquor is thicker " + mode.when() + " than any whose flow was measured.",
          "It has "
              + show(Kind.PERCENT, CarriedStream.solids(mode.stream().orElseThrow()))
              + " solids without sand; the table of flow curves ends at "
              + show(Kind.PERCENT, Carriers.HIGHEST_TOTAL_SOLIDS)
              + ".",
          "Dilute before the line; or judge the line by its own liquor: "
              + Carriers.MEASURE_INSTEAD
              + ".");
    }
  }

  /** The line runs part of the time: as long as it takes to move what the plant sends. */
  private void takes(List<CarriedStream> modes) {
    double design = Measure.FLOW.si(flow.design());
    double most = Measure.FLOW.si(flow.maximum());
    List<CarriedStream> tooMuch = new ArrayList<>();
    double seconds = 0;
    double volume = 0;
    for (CarriedStream mode : modes) {
      seconds += mode.lastsS() * mode.flowM3ps() / design;
      volume += mode.lastsS() * mode.flowM3ps();
      if (mode.lastsS() > 0 && mode.flowM3ps() > most) {
        tooMuch.add(mode);
      }
    }
    if (!tooMuch.isEmpty()) {
      add(
          Severity.FAIL,
          Topic.DAY,
          "line",
          "The plant sends more than the line takes.",
          tooMuch.stream()
                  .map(
                      mode ->
                          "The mean flow is "
                              + show(Kind.FLOW, mode.flowM3ps())
                              + " "
                              + mode.when())
                  .collect(Collectors.joining("; "))
              + "; the line runs at "
              + show(Kind.FLOW, most)
              + " at most.",
          "Give the line more flow, or send it less.");
      return;
    }
    add(
        Severity.PASS,
        Topic.DAY,
        "line",
        "The line takes what the plant sends.",
        "That is "
            + show(Kind.VOLUME, volume)
            + " a day; at the design flow the line runs "
            + show(Kind.HOURS, seconds)
            + " of the day. It must be flushed before each stop, or"
            + " start against its bed.",
        "");
  }
}
