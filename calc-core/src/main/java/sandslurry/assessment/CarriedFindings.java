package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import sandslurry.assessment.plant.CarriedStream;
import sandslurry.design.Design;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Severity;
import sandslurry.material.liquid.Carriers;
import sandslurry.plant.Stream;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** Findings on a line that carries a stream of the plant. */
record CarriedFindings(Design design, MixtureSpec.OfStream mixture, Findings findings)
    implements FindingWriter {
  /**
   * The graver of two assessments of one line at different times: by verdict, then by plugging,
   * then by the velocity over that which passes, in the run and at the flow where that is least.
   */
  static final Comparator<Assessment> GRAVER =
      Comparator.comparing(Assessment::verdict)
          .thenComparing(assessment -> worst(assessment, Topic.PLUGGING))
          .thenComparing(Comparator.comparingDouble(CarriedFindings::margin).reversed());

  private static final String ELEMENT = "line";

  private static double margin(Assessment assessment) {
    return assessment.line().stream()
        .flatMap(line -> line.states().stream())
        .flatMap(state -> state.runs().stream())
        .filter(run -> run.deposition().isPresent())
        .mapToDouble(
            run -> run.leastVelocityMps() / run.deposition().orElseThrow().velocityToPassMps())
        .min()
        .orElse(Double.MAX_VALUE);
  }

  /** The time at which the line is closest to settling. */
  static CarriedStream governing(Map<CarriedStream, Assessment> judged) {
    return judged.entrySet().stream()
        .max(Map.Entry.comparingByValue(GRAVER))
        .orElseThrow()
        .getKey();
  }

  /**
   * Findings on the state of the stream that is shown, on what is worse in another, and on whether
   * the line takes what the plant sends.
   *
   * @param modes the stream at every time
   * @param judged the line at every time at which it can be judged
   */
  void of(List<CarriedStream> modes, Map<CarriedStream, Assessment> judged) {
    if (!judged.isEmpty()) {
      CarriedStream shown = governing(judged);
      shown(shown, judged);
      for (Topic topic : Topic.values()) {
        worse(topic, shown, judged);
      }
    }
    modes.forEach(this::unknown);
    tooThick(modes);
    if (modes.stream().allMatch(mode -> mode.stream().isPresent())) {
      takes(modes);
    }
  }

  private void shown(CarriedStream shown, Map<CarriedStream, Assessment> judged) {
    Stream stream = shown.stream().orElseThrow();
    found(judged.size() > 1 ? "stream-worst" : "stream", Severity.NOTE, Topic.DATA, ELEMENT)
        .with("stream", mixture.stream())
        .with("when", shown.when())
        .with("sand", Kind.PERCENT, stream.sandVolumeShare())
        .with("solids", Kind.PERCENT, stream.totalSolids())
        .why("stream")
        .when(
            judged.size() > 1,
            f -> f.with("others", units -> others(shown, judged, units)).why("stream-others"))
        .add();
  }

  private static String others(
      CarriedStream shown, Map<CarriedStream, Assessment> judged, UnitSystem units) {
    Map<Severity, List<Stream>> by = new TreeMap<>(Comparator.reverseOrder());
    judged.forEach(
        (time, there) -> {
          if (time != shown) {
            by.computeIfAbsent(there.verdict(), v -> new ArrayList<>())
                .add(time.stream().orElseThrow());
          }
        });
    return by.entrySet().stream()
        .map(
            entry ->
                entry.getValue().size()
                    + (entry.getValue().size() == 1 ? " is " : " are ")
                    + entry.getKey()
                    + " ("
                    + span(entry.getValue(), Stream::sandVolumeShare, units)
                    + " sand, "
                    + span(entry.getValue(), Stream::totalSolids, units)
                    + " solids)")
        .collect(Collectors.joining("; "));
  }

  private static String span(
      List<Stream> streams, ToDoubleFunction<Stream> share, UnitSystem units) {
    double least = streams.stream().mapToDouble(share).min().orElseThrow();
    double most = streams.stream().mapToDouble(share).max().orElseThrow();
    return units.showSpan(Kind.PERCENT, least, most);
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
        findings.all().add(finding.on(finding.element() + ", " + first.when()));
      }
    }
    for (CarriedStream time : times.subList(1, times.size())) {
      found("stream-too", Severity.NOTE, topic, ELEMENT)
          .with("topic", topic.word())
          .with("verdict", worst.toString())
          .with("when", time.when())
          .add();
    }
  }

  private static Severity worst(Assessment assessment, Topic topic) {
    return BandFindings.worst(assessment.findings(), topic);
  }

  private void unknown(CarriedStream mode) {
    if (mode.stream().isEmpty()) {
      found("stream-unknown", Severity.FAIL, ELEMENT)
          .with("when", mode.when())
          .why("stream-unknown")
          .cure("mend-plant")
          .add();
    }
  }

  /** Said of the thickest time alone: the others call for the same. */
  private void tooThick(List<CarriedStream> modes) {
    modes.stream()
        .filter(mode -> mode.stream().isPresent() && mode.flowM3ps() > 0 && !mode.known())
        .max(Comparator.comparingDouble(CarriedFindings::solids))
        .ifPresent(
            mode ->
                found("stream-too-thick", Severity.FAIL, ELEMENT)
                    .with("when", mode.when())
                    .with("solids", Kind.PERCENT, solids(mode))
                    .with("most", Kind.PERCENT, Carriers.HIGHEST_TOTAL_SOLIDS)
                    .why("stream-too-thick")
                    .cure("dilute-or-measure")
                    .add());
  }

  private static double solids(CarriedStream mode) {
    return CarriedStream.solids(mode.stream().orElseThrow());
  }

  /** The line runs part of the time: as long as it takes to move what the plant sends. */
  private void takes(List<CarriedStream> modes) {
    FlowSpec flow = design.oneLine().flow();
    double most = flow.maximumM3ps();
    double seconds = 0;
    double volume = 0;
    for (CarriedStream mode : modes) {
      seconds += mode.lastsS() * mode.flowM3ps() / flow.designM3ps();
      volume += mode.lastsS() * mode.flowM3ps();
    }
    Optional<CarriedStream> greatest =
        modes.stream()
            .filter(mode -> mode.lastsS() > 0)
            .max(Comparator.comparingDouble(CarriedStream::flowM3ps))
            .filter(mode -> mode.flowM3ps() > most);
    if (greatest.isPresent()) {
      found("stream-too-much", Severity.FAIL, ELEMENT)
          .with("flow", Kind.FLOW, greatest.get().flowM3ps())
          .with("when", greatest.get().when())
          .with("most", Kind.FLOW, most)
          .why("stream-too-much")
          .cure("more-flow")
          .add();
      return;
    }
    found("stream-fits", Severity.PASS, ELEMENT)
        .with("volume", Kind.VOLUME, volume)
        .with("hours", Kind.HOURS, seconds)
        .why("stream-fits")
        .add();
  }
}
