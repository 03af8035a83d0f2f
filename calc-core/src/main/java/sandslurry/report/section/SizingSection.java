package sandslurry.report.section;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sandslurry.assessment.line.WindowWords;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.report.block.Block;
import sandslurry.report.figure.Column;
import sandslurry.study.PumpWanted;
import sandslurry.study.SizedPipe;
import sandslurry.study.Sizing;
import sandslurry.study.UnitSizing;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What a sizing found, as blocks. */
public final class SizingSection {
  private static final int LONG = 200;

  /** Results that differ by less are alike: a day by schedule repeats itself so nearly. */
  private static final double LIKE = 1e-4;

  private static final String SETTLES =
      "Sand settles at the minimum flow rate; by size it is carried from";

  private SizingSection() {}

  /**
   * The pipes that fit, the duty of the pump in the first of them, and why the others do not.
   *
   * @param sizing what was found
   * @param units the units to write in
   * @param most how many of those that fit are shown
   * @return the blocks
   */
  public static List<Block> of(Sizing sizing, UnitSystem units, int most) {
    List<Block> blocks = new ArrayList<>();
    if (sizing.fits().isEmpty()) {
      blocks.add(new Block.Paragraph("No standard pipe fits at these flow rates."));
    } else {
      blocks.add(fits(sizing.fits().stream().limit(most).toList(), units));
      if (sizing.fits().size() > most) {
        blocks.add(
            new Block.Paragraph(
                "and " + (sizing.fits().size() - most) + " more that fit; --all shows them"));
      }
      cautions(sizing.fits().stream().limit(most).toList(), blocks);
      PumpWanted.of(sizing.fits().get(0))
          .ifPresent(
              wanted -> {
                blocks.add(
                    new Block.Heading(
                        3, "Ask a pump supplier for, with " + sizing.fits().get(0).pipe().words()));
                blocks.add(Block.Items.bullets(wanted(wanted, units)));
              });
    }
    if (!sizing.rejected().isEmpty()) {
      blocks.add(new Block.Heading(3, "Rejected"));
      blocks.add(Block.Items.bullets(rejected(sizing.rejected(), units)));
    }
    return List.copyOf(blocks);
  }

  /**
   * The pipes that fit alone.
   *
   * @param sizing what was found
   * @param units the units to write in
   * @param most how many are shown
   * @return one table
   */
  public static List<Block> fits(Sizing sizing, UnitSystem units, int most) {
    return List.of(fits(sizing.fits().stream().limit(most).toList(), units));
  }

  /**
   * What would make the nearest pipe fit when none does.
   *
   * @param nearest the pipe and its cures
   * @return the blocks
   */
  public static List<Block> nearest(Sizing.Nearest nearest) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph("Nearest to fitting is " + nearest.pipe().words() + "."));
    blocks.addAll(CuresSection.of(nearest.cures()));
    return List.copyOf(blocks);
  }

  /**
   * The sizes of a unit for an aim.
   *
   * @param sizing what was found
   * @param units the units to write in
   * @return a table of dimensions and feeds, and what governs or why nothing does
   */
  public static List<Block> unit(UnitSizing sizing, UnitSystem units) {
    if (sizing.rows().isEmpty()) {
      return List.of(
          new Block.Paragraph(
              "No size of "
                  + sizing.unit()
                  + " serves this aim: a box is emptied by its screw and not cleaned out, a pit is"
                  + " not there to capture sand, and a plant without a steady state has no feed."));
    }
    Kind<?> kind = sizing.aim().kind();
    List<UnitSizing.Row> rows = withoutLike(sizing.rows());
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Column.table(
            rows,
            List.of(
                Column.text("dimension", UnitSizing.Row::dimension),
                Column.text("feed", UnitSizing.Row::feed),
                Column.text("size", SizingSection::size),
                Column.maybe("area", Kind.AREA, UnitSizing.Row::areaM2),
                Column.of(sizing.aim().words(), kind, row -> row.measured().value()),
                Column.text("what limits", row -> limits(row, units))),
            units));
    String wanted = sizing.aim().words() + " " + units.show(kind, sizing.wanted());
    boolean several = rows.stream().map(UnitSizing.Row::feed).distinct().count() > 1;
    for (UnitSizing.Row row : sizing.governing()) {
      blocks.add(
          new Block.Paragraph(
              "With "
                  + row.dimension()
                  + " "
                  + String.join(" x ", row.typed())
                  + " the unit \""
                  + sizing.unit()
                  + "\" reaches the aim ("
                  + wanted
                  + ")"
                  + (several
                      ? " with every feed above; \"" + row.feed() + "\" needs most."
                      : ".")));
    }
    if (sizing.governing().isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "No size that was tried reaches the aim ("
                  + wanted
                  + ") with every feed above; each row without a size shows what the largest"
                  + " does."));
    }
    if (several) {
      blocks.add(
          new Block.Paragraph(
              "Average feeds and the coldest liquor are those of the balance with the unit of that"
                  + " size; the greatest hour and the sandiest moment are those of the last day by"
                  + " schedule, as the plant is now."));
    }
    return List.copyOf(blocks);
  }

  /** One row a dimension where each feed asks for the same: the plant is fed evenly. */
  private static List<UnitSizing.Row> withoutLike(List<UnitSizing.Row> rows) {
    Map<String, UnitSizing.Row> first = new LinkedHashMap<>();
    rows.forEach(row -> first.putIfAbsent(row.dimension(), row));
    boolean alike =
        rows.stream()
            .allMatch(
                row -> {
                  UnitSizing.Row one = first.get(row.dimension());
                  return row.typed().equals(one.typed())
                      && Math.abs(row.measured().value() - one.measured().value())
                          <= LIKE * Math.abs(one.measured().value());
                });
    return alike ? List.copyOf(first.values()) : rows;
  }

  private static String size(UnitSizing.Row row) {
    return row.typed().isEmpty()
        ? "none"
        : (row.smallest() ? "less than " : "") + String.join(" x ", row.typed());
  }

  private static String limits(UnitSizing.Row row, UnitSystem units) {
    if (row.measured().tooThick()) {
      return "the liquor is too thick: nothing settles";
    }
    if (row.measured().halfM().isEmpty()) {
      return "-";
    }
    return "less than half of the grains below "
        + units.show(Kind.GRAIN, row.measured().halfM().getAsDouble())
        + " ("
        + units.show(Kind.PERCENT, row.measured().finerShare())
        + " of its sand) is captured";
  }

  private static Block fits(List<SizedPipe> fits, UnitSystem units) {
    List<Column<SizedPipe>> columns =
        new ArrayList<>(
            List.of(
                Column.text("pipe", fit -> fit.pipe().size() + " " + fit.pipe().wallClass()),
                Column.text("standard", fit -> fit.pipe().system().standard()),
                Column.text("verdict", fit -> fit.verdict().name()),
                Column.text("window [" + Kind.FLOW.symbol(units) + "]", fit -> window(fit, units)),
                Column.maybe("design flow", Kind.FLOW, SizingSection::designFlow),
                Column.maybe("least velocity", Kind.VELOCITY, SizedPipe::leastVelocityMps),
                Column.maybe("TDH, slurry", Kind.HEAD, SizedPipe::headM),
                Column.maybe("power taken up", Kind.POWER, SizedPipe::hydraulicW),
                Column.maybe("flush", Kind.VOLUME, SizedPipe::flushM3)));
    if (fits.stream().anyMatch(fit -> running(fit).isPresent())) {
      columns.add(Column.maybe("runs a day", Kind.HOURS, SizingSection::running));
    }
    return Column.table(fits, columns, units);
  }

  private static OptionalDouble designFlow(SizedPipe fit) {
    return fit.assessment().design().line().stream()
        .mapToDouble(line -> line.flow().designM3ps())
        .findFirst();
  }

  private static OptionalDouble running(SizedPipe fit) {
    OptionalDouble volume =
        fit.assessment().design().service().operation().stream()
            .map(OperationSpec::dailyVolumeM3)
            .flatMap(daily -> daily.stream())
            .mapToDouble(Double::doubleValue)
            .findFirst();
    return volume.isPresent() ? fit.runningS(volume.getAsDouble()) : volume;
  }

  private static void cautions(List<SizedPipe> fits, List<Block> blocks) {
    List<String> lines =
        bySize(fits.stream().filter(fit -> fit.gravest().isPresent()), SizingSection::reason)
            .entrySet()
            .stream()
            .map(reason -> reason.getKey() + ": " + walls(reason.getValue()))
            .toList();
    if (!lines.isEmpty()) {
      blocks.add(new Block.Heading(3, "Cautions"));
      blocks.add(Block.Items.bullets(lines));
    }
  }

  private static List<String> wanted(PumpWanted wanted, UnitSystem units) {
    return List.of(
        "flow rate " + units.show(Kind.FLOW, wanted.flowM3ps()),
        "head "
            + units.showAtLeast(Kind.HEAD, wanted.slurryHeadM())
            + " of slurry"
            + (wanted.waterHeadM().isPresent()
                ? ", that is "
                    + units.showAtLeast(Kind.HEAD, wanted.waterHeadM().getAsDouble())
                    + " on its curve for water"
                : "; the head that solids take is so large that the supplier must test it"),
        "power taken up by the slurry "
            + units.showAtLeast(Kind.POWER, wanted.hydraulicW())
            + "; at the shaft this over the efficiency of the pump with solids",
        "NPSH available "
            + units.showAtMost(Kind.HEAD, wanted.suctionM())
            + ", less what the suction line loses",
        "passage for three of the largest grains side by side, "
            + units.showAtLeast(Kind.GRAIN, 3 * wanted.largestGrainM())
            + " (common practice, no source), and for fibre");
  }

  /** Why pipes do not do: a line a reason, with the sizes that it is of. */
  private static List<String> rejected(List<SizedPipe> pipes, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    bySize(pipes.stream(), SizingSection::brief)
        .forEach(
            (reason, sizes) ->
                lines.add(
                    reason
                        + ": "
                        + (reason.equals(SETTLES) ? carriedFrom(sizes, units) : walls(sizes))));
    return lines;
  }

  private static Map<String, Map<String, List<SizedPipe>>> bySize(
      Stream<SizedPipe> pipes, Function<SizedPipe, String> reason) {
    return pipes.collect(
        Collectors.groupingBy(
            reason,
            LinkedHashMap::new,
            Collectors.groupingBy(
                pipe -> pipe.pipe().size(), LinkedHashMap::new, Collectors.toList())));
  }

  private static String walls(Map<String, List<SizedPipe>> sizes) {
    List<String> words = new ArrayList<>();
    sizes.forEach(
        (size, pipes) ->
            words.add(
                pipes.size() == 1
                    ? size + " " + pipes.get(0).pipe().wallClass()
                    : size + " (" + pipes.size() + " walls)"));
    return String.join(", ", words);
  }

  private static String carriedFrom(Map<String, List<SizedPipe>> sizes, UnitSystem units) {
    List<String> words = new ArrayList<>();
    sizes.forEach((size, pipes) -> words.add(size + " " + carriedFrom(pipes, units)));
    return String.join(", ", words) + " " + Kind.FLOW.symbol(units);
  }

  /** The least flow rates at which pipes of a size carry the sand. */
  private static String carriedFrom(List<SizedPipe> pipes, UnitSystem units) {
    DoubleSummaryStatistics from =
        pipes.stream()
            .mapToDouble(pipe -> pipe.window().carriesFromM3ps().getAsDouble())
            .summaryStatistics();
    return units.span(Kind.FLOW, from.getMin(), from.getMax());
  }

  /** Why a pipe does not do, in a few words. */
  private static String brief(SizedPipe pipe) {
    OptionalDouble runsFrom =
        pipe.assessment().design().line().stream()
            .mapToDouble(line -> line.flow().minimumM3ps())
            .findFirst();
    if (pipe.window().carriesFromM3ps().orElse(0) > runsFrom.orElse(0)) {
      return SETTLES;
    }
    if (pipe.pumpFallsShort() && pipe.verdict() != Severity.FAIL) {
      return "The pump gives less than the minimum flow rate";
    }
    return pipe.gravest().map(Finding::what).map(SizingSection::withoutStop).orElse("");
  }

  /** The gravest finding with its reason. */
  private static String reason(SizedPipe pipe) {
    return pipe.gravest()
        .map(finding -> withoutStop(finding.what() + finding.firstReason(LONG)))
        .orElse("");
  }

  private static String withoutStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  private static String window(SizedPipe fit, UnitSystem units) {
    return fit.window().main().map(new WindowWords(units)::range).orElse("none");
  }
}
