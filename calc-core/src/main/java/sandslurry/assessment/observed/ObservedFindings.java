package sandslurry.assessment.observed;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.materials.DesignCarrier;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.observed.ObservedResult.Agreement;
import sandslurry.assessment.observed.ObservedResult.Cause;
import sandslurry.assessment.observed.ObservedResult.Clearing;
import sandslurry.assessment.observed.ObservedResult.Explained;
import sandslurry.assessment.observed.ObservedResult.Filling;
import sandslurry.assessment.observed.ObservedResult.LineCheck;
import sandslurry.assessment.observed.ObservedResult.PumpCheck;
import sandslurry.assessment.observed.ObservedResult.SecondReading;
import sandslurry.design.Design;
import sandslurry.diagnosis.Bracket;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.material.Proportions;
import sandslurry.units.Kind;

/**
 * Findings on a pressure and a flow rate read on site.
 *
 * @param design the design
 * @param result what the reading says
 * @param findings takes what is found
 */
public record ObservedFindings(Design design, ObservedResult result, Findings findings)
    implements FindingWriter {
  /** Every finding: the line, each cause, the pump, the filling. */
  public void all() {
    for (String run : result.settling()) {
      found("settles", Severity.FAIL, run)
          .with("flow", Kind.FLOW, result.line().flowM3ps())
          .why("settles")
          .cure("flow")
          .add();
    }
    line();
    result.possible().forEach(this::cause);
    result.explained().stream().filter(e -> !e.enoughSand()).forEach(this::littleSand);
    undecided();
    result.pump().ifPresent(this::pump);
    result.filling().ifPresent(this::filling);
  }

  private void line() {
    LineCheck check = result.line();
    Found found =
        switch (check.agreement()) {
          case AS_CALCULATED -> found("as-clean", Severity.PASS, "line");
          case MORE -> found("more", Severity.CAUTION, "line").cure("gauge");
          case LESS -> found("less", Severity.CAUTION, "line").cure("leak");
        };
    found
        .with("read", Kind.PRESSURE, check.pressurePa())
        .with("flow", Kind.FLOW, check.flowM3ps())
        .with("clean", Kind.PRESSURE, check.calculatedPa())
        .with("uncertainty", Kind.PRESSURE, check.uncertaintyPa())
        .why("line");
    if (check.agreement() == Agreement.AS_CALCULATED) {
      result
          .value(Cause.BED)
          .ifPresent(bed -> found.with("hidden", Kind.DEPTH, depthM(bed.high())).why("hidden"));
    } else if (result.possible().isEmpty()) {
      found.why("unexplained");
    }
    found.add();
  }

  /** Depth in the first run. */
  private double depthM(double share) {
    return share * design.oneLine().route().runs().get(0).meanBoreM();
  }

  private void cause(Explained explained) {
    Bracket values = explained.values().orElseThrow();
    switch (explained.cause()) {
      case BED -> {
        Found found =
            found("bed", Severity.CAUTION, "line")
                .with("depth", Kind.DEPTH, depthM(values.value()))
                .with("low", Kind.DEPTH, depthM(values.low()))
                .with("high", Kind.DEPTH, depthM(values.high()))
                .with("share", Kind.PERCENT, values.value())
                .why("bed");
        result.clearing().ifPresentOrElse(c -> clear(found, c), () -> found.cure("parts"));
        found.cure("safely").add();
      }
      case LIQUID -> {
        Found found =
            (values.value() >= 1
                    ? found("thicker", Severity.NOTE, "line")
                    : found("thinner", Severity.NOTE, "line"))
                .with("factor", Kind.NUMBER, values.value(), values.low(), values.high())
                .why("liquid");
        double usual =
            DesignCarrier.scatter(design.carrier(), Materials.of(design).carrier()).factor();
        found
            .when(
                usual > 1 && (values.low() > usual || values.high() < 1 / usual),
                f -> f.with("usual", Kind.NUMBER, usual).why("unlikely"))
            .add();
      }
      case ROUGHNESS ->
          found("rough", Severity.NOTE, "line")
              .with("roughness", Kind.DEPTH, values.value())
              .with("low", Kind.DEPTH, values.low())
              .with("high", Kind.DEPTH, values.high())
              .why("rough")
              .add();
    }
  }

  private static void clear(Found found, Clearing clearing) {
    found
        .with("flush", Kind.FLOW, clearing.flowM3ps())
        .with("volume", Kind.VOLUME, clearing.volumeM3())
        .with("pressure", Kind.PRESSURE, clearing.pressurePa());
    if (clearing.borne()) {
      found.cure("flush");
    } else {
      found.with("rating", Kind.PRESSURE, clearing.ratingPa().orElseThrow()).cure("rating");
    }
  }

  private void littleSand(Explained bed) {
    found("too-little-sand", Severity.NOTE, "line")
        .with("low", Kind.DEPTH, depthM(bed.values().orElseThrow().low()))
        .why("too-little-sand")
        .add();
  }

  /** What one reading leaves open, and the second reading that tells most of it apart. */
  private void undecided() {
    List<List<Cause>> open = result.open();
    if (open.isEmpty()) {
      return;
    }
    Found found =
        found("undecided", Severity.NOTE, "line")
            .with(
                "causes",
                result.possible().stream()
                    .map(e -> word(e.cause()))
                    .collect(Collectors.joining(", ")))
            .why("undecided");
    List<List<Cause>> left = new ArrayList<>(open);
    for (SecondReading second : result.second()) {
      String distinguished = distinguished(left.stream().filter(second::distinguishes).toList());
      if (!left.removeIf(second::distinguishes)) {
        continue;
      }
      switch (second.kind()) {
        case AFTER_FLUSH -> found.with("byFlush", distinguished).cure("after-flush");
        case WATER -> found.with("byWater", distinguished).cure("water");
        case HALF_FLOW ->
            found
                .with("half", Kind.FLOW, second.flowM3ps())
                .with("byHalf", distinguished)
                .cure("half");
      }
    }
    found.when(!left.isEmpty(), f -> f.with("left", distinguished(left)).cure("none")).add();
  }

  private static String distinguished(List<List<Cause>> pairs) {
    return pairs.stream()
        .map(pair -> word(pair.get(0)) + " from " + word(pair.get(1)))
        .collect(Collectors.joining(", "));
  }

  private static String word(Cause cause) {
    return switch (cause) {
      case BED -> "settled bed";
      case LIQUID -> "liquor";
      case ROUGHNESS -> "pipe roughness";
    };
  }

  private void pump(PumpCheck pump) {
    boolean piston = design.pump().orElseThrow().piston().isPresent();
    Bracket wear = pump.wear();
    boolean lacks = wear.low() > 0;
    boolean more = wear.high() < 0;
    Found found =
        (lacks
                ? piston
                    ? found("piston-worn", Severity.CAUTION, "pump")
                    : found("pump-worn", Severity.CAUTION, "pump")
                : more
                    ? found("pump-more", Severity.CAUTION, "pump").cure("pump-more")
                    : found("pump-as-new", Severity.PASS, "pump"))
            .with("wear", Kind.PERCENT, Math.abs(wear.value()))
            .with("low", Kind.PERCENT, Math.abs(lacks ? wear.low() : wear.high()))
            .with("high", Kind.PERCENT, Math.abs(lacks ? wear.high() : wear.low()))
            .with("least", Kind.PERCENT, Math.max(0, wear.high()));
    if (!lacks && !more) {
      found.why("pump-hidden");
    } else if (lacks && pump.closedPa().isPresent()) {
      found
          .why("pump-worn")
          .with("new", Kind.PRESSURE, pump.closedPa().get().get(0))
          .with("now", Kind.PRESSURE, pump.closedPa().get().get(1))
          .cure("closed");
    } else if (lacks) {
      found.why("piston-worn").cure("piston");
    }
    found.add();
  }

  private void filling(Filling filling) {
    Found found =
        found("fills", Severity.NOTE, "line")
            .with("sand", Kind.MASS, filling.sandKg())
            .with("least", Kind.TIME, filling.leastS())
            .why("fills");
    if (filling.expectedS().isPresent()) {
      found.with("expected", Kind.TIME, filling.expectedS().getAsDouble()).why("expected");
    } else {
      found.why("carried");
    }
    found
        .when(
            filling.sinceS().isPresent(),
            f ->
                f.with("since", Kind.TIME, filling.sinceS().getAsDouble())
                    .with("stayed", Kind.PERCENT, filling.leastS() / filling.sinceS().getAsDouble())
                    .why("since"))
        .with("packed", Kind.PERCENT, Proportions.PACKED_VOLUME_FRACTION)
        .add();
  }
}
