package sandslurry.ui;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javax.measure.Quantity;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sandslurry.assessment.Evaluation;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Reading;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.PipeSystem;
import sandslurry.report.block.Block;
import sandslurry.report.block.TextView;
import sandslurry.report.section.SizingSection;
import sandslurry.study.NewPen;
import sandslurry.study.Sizing;
import sandslurry.study.UnitSizing;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.ShownText;
import sandslurry.units.UnitSystem;

/** Finds the standard pipes that a line fits into, or the size of a unit. */
@Command(
    name = "size",
    description = {
      "Finds the standard pipes that carry the sand of a line, and the duty of its pump.",
      "Takes a design whose runs need no pipe, or the numbers of a new pen.",
      "With --unit it finds the size of a box, a lane or a pit for one aim."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {"0:a pipe or a size fits", "2:none fits", "3:bad input"})
final class SizeCommand implements Callable<Integer> {
  private static final int SHOWN = 12;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "The design file; - for standard input.")
  private String file;

  @ArgGroup(exclusive = false, heading = "%nA new pen instead of a file:%n")
  private Pen pen;

  @Option(
      names = "--system",
      paramLabel = "STANDARD",
      description = "A pipe standard to choose from, such as \"ASTM D1785\"; all if not given.")
  private List<String> systems = List.of();

  @Option(
      names = "--own-flow",
      description =
          "Give each pipe a flow rate of its own, above the lowest that carries the sand.")
  private boolean ownFlow;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "Units of what is printed; those of the file, for a pen metric, if not given.")
  private JudgeCommand.Units units;

  @Option(
      names = "--line",
      paramLabel = "NAME",
      description = "The line to be sized, where the design has several.")
  private String line;

  @Option(names = "--all", description = "Show every pipe that fits.")
  private boolean all;

  @ArgGroup(exclusive = false, heading = "%nA unit instead of the line:%n")
  private UnitWanted unit;

  /** A unit and what is wanted of it. */
  private static final class UnitWanted {
    @Option(
        names = "--unit",
        required = true,
        paramLabel = "NAME",
        description = "A box, lane or pit of the plant, or lane for that of the design.")
    private String name;

    @ArgGroup(multiplicity = "1")
    private Wanted wanted;

    /** The aim: one of these. */
    private static final class Wanted {
      @Option(
          names = "--capture",
          paramLabel = "SHARE",
          description = "Least share of its sand that it captures.")
      private String capture;

      @Option(
          names = "--recovery",
          paramLabel = "SHARE",
          description = "Least share of the flushed sand that the plant recovers.")
      private String recovery;

      @Option(
          names = "--retention",
          paramLabel = "TIME",
          description = "Least time that what flows in stays.")
      private String retention;

      @Option(
          names = "--clean-out",
          paramLabel = "TIME",
          description = "Least time between two clean-outs.")
      private String interval;
    }

    UnitSizing sized(DesignDocument document) throws BadInputException {
      Reading reading = document.read();
      BadInputException.check(reading.problems());
      List<String> known = UnitSizing.units(document);
      if (!known.contains(name)) {
        throw new BadInputException(
            "There is no unit \""
                + ShownText.brief(name)
                + "\" to size; there "
                + (known.isEmpty() ? "is none" : "are: " + String.join(", ", known)));
      }
      String text =
          Stream.of(wanted.capture, wanted.recovery, wanted.retention, wanted.interval)
              .filter(Objects::nonNull)
              .findFirst()
              .orElseThrow();
      UnitSizing.Aim aim =
          wanted.capture != null
              ? UnitSizing.Aim.CAPTURE
              : wanted.recovery != null
                  ? UnitSizing.Aim.RECOVERY
                  : wanted.retention != null ? UnitSizing.Aim.RETENTION : UnitSizing.Aim.INTERVAL;
      double si;
      try {
        si = aim.parse(text);
      } catch (IllegalArgumentException e) {
        throw new BadInputException(e.getMessage());
      }
      return UnitSizing.of(document, Evaluation.assess(reading.design().get()), name, aim, si);
    }
  }

  /** What is known of a new pen. */
  private static final class Pen {
    @Option(
        names = "--cows",
        required = true,
        paramLabel = "NUMBER",
        description = "Lactating cows.")
    private String cows;

    @Option(
        names = "--sand",
        required = true,
        paramLabel = "MASS/TIME",
        description = "Bedding sand used for a cow, such as \"20 kg/d\".")
    private String sand;

    @Option(
        names = "--interval",
        required = true,
        paramLabel = "TIME",
        description = "Time between two scrapings, such as \"8 h\".")
    private String interval;

    @Option(
        names = "--length",
        required = true,
        paramLabel = "LENGTH",
        description = "Length of the line.")
    private String length;

    @Option(
        names = "--rise",
        paramLabel = "LENGTH",
        defaultValue = "0 m",
        description = "Height of its end above its start (default: ${DEFAULT-VALUE}).")
    private String rise;

    @Option(
        names = "--milk",
        paramLabel = "MASS/TIME",
        defaultValue = "35 kg/d",
        description = "Milk of a cow, which the manure follows (default: ${DEFAULT-VALUE}).")
    private String milk;

    @Option(
        names = "--solids",
        paramLabel = "SHARE",
        defaultValue = "2 %",
        description = "Sand-free solids that the manure is thinned to (default: 2 %%).")
    private String solids;

    @Option(
        names = "--temperature",
        paramLabel = "TEMPERATURE",
        defaultValue = "10 degC",
        description = "Temperature of the liquor (default: ${DEFAULT-VALUE}).")
    private String temperature;

    @Option(
        names = "--gradation",
        paramLabel = "SAND",
        defaultValue = "ASTM C33",
        description = "A standard sand (default: ${DEFAULT-VALUE}).")
    private String gradation;

    NewPen read() throws BadInputException {
      List<String> wrong = new ArrayList<>();
      double[] si = {
        si(Measure.NUMBER, "--cows", cows, wrong),
        si(Measure.MASS_FLOW, "--milk", milk, wrong),
        si(Measure.MASS_FLOW, "--sand", sand, wrong),
        si(Measure.TIME, "--interval", interval, wrong),
        si(Measure.LENGTH, "--length", length, wrong),
        si(Measure.LENGTH, "--rise", rise, wrong),
        si(Measure.FRACTION, "--solids", solids, wrong),
        si(Measure.TEMPERATURE, "--temperature", temperature, wrong)
      };
      if (!wrong.isEmpty()) {
        throw new BadInputException(String.join("\n", wrong));
      }
      try {
        return new NewPen(si[0], si[1], si[2], si[3], si[4], si[5], si[6], si[7]);
      } catch (IllegalArgumentException e) {
        throw new BadInputException(e.getMessage());
      }
    }

    private static <Q extends Quantity<Q>> double si(
        Measure<Q> measure, String name, String text, List<String> wrong) {
      try {
        return measure.si(measure.parse(text));
      } catch (IllegalArgumentException e) {
        wrong.add(name + ": " + e.getMessage());
        return Double.NaN;
      }
    }
  }

  @Override
  public Integer call() throws BadInputException {
    if ((file == null) == (pen == null)) {
      throw new BadInputException(
          "size needs a design file, or --cows with the rest of a new pen.");
    }
    TextView view = new TextView(JudgeCommand.REPORT_WIDTH);
    PrintWriter out = spec.commandLine().getOut();
    DesignDocument document;
    if (pen != null) {
      NewPen known = pen.read();
      document = known.design(system("metric"), pen.gradation);
      out.print(view.write(List.of(new Block.Paragraph(words(known, system("metric"))))));
    } else {
      document =
          file.equals("-")
              ? BadInputException.read(System.in)
              : BadInputException.load(BadInputException.path(file));
    }
    if (unit != null) {
      if (pen != null) {
        throw new BadInputException("size takes --unit with a design file, not with a new pen.");
      }
      UnitSizing sized = unit.sized(document);
      out.print(view.write(SizingSection.unit(sized, system(document.text("/units")))));
      out.println(Product.CAUTION);
      out.flush();
      return sized.governing().isEmpty() ? 2 : 0;
    }
    document = ofLine(document);
    Sizing sizing =
        ownFlow || pen != null
            ? Sizing.withFlow(document, chosen())
            : Sizing.of(document, chosen());
    BadInputException.check(sizing.problems());
    UnitSystem shown = system(document.text("/units"));
    out.print(view.write(SizingSection.of(sizing, shown, all ? Integer.MAX_VALUE : SHOWN)));
    sizing.nearest(document).ifPresent(n -> out.print(view.write(SizingSection.nearest(n))));
    if (sizing.fits().isEmpty() && !ownFlow && pen == null) {
      Sizing other = Sizing.withFlow(document, chosen());
      if (!other.fits().isEmpty()) {
        out.print(
            view.write(
                List.of(
                    new Block.Heading(3, "At a flow rate of its own each of these would fit"))));
        out.print(view.write(SizingSection.fits(other, shown, SHOWN)));
      }
    }
    out.println(Product.CAUTION);
    out.flush();
    return sizing.fits().isEmpty() ? 2 : 0;
  }

  /** The line to be sized of a design of several. */
  private DesignDocument ofLine(DesignDocument document) throws BadInputException {
    int count = document.size("/lines");
    List<String> names = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String name = document.text("/lines/" + i + "/name").strip();
      names.add(name.isEmpty() ? "Line " + (i + 1) : name);
    }
    if (line == null && count < 2) {
      return document;
    }
    int place = line == null ? -1 : names.indexOf(line.strip());
    if (place < 0) {
      throw new BadInputException(
          "--line says which line is sized. The lines are: "
              + ShownText.message(String.join(", ", names))
              + ".");
    }
    return count < 2 ? document : document.ofLine(place);
  }

  /** The units asked for, or those of a file. */
  private UnitSystem system(String typed) {
    boolean us = units == null ? typed.equals("US") : units == JudgeCommand.Units.US;
    return us ? UnitSystem.US : UnitSystem.METRIC;
  }

  private static String words(NewPen pen, UnitSystem units) {
    return "A day brings "
        + units.show(Kind.VOLUME, pen.dailyM3())
        + " of mixture with liquor of "
        + units.show(Kind.PERCENT, pen.liquorSolids())
        + " solids, of which "
        + units.show(Kind.VOLUME, pen.dilutionM3())
        + " is water or recycled liquor added. Each pipe runs a tenth or more above the lowest flow"
        + " rate that carries the sand in it.";
  }

  private Set<PipeSystem> chosen() throws BadInputException {
    if (systems.isEmpty()) {
      return EnumSet.allOf(PipeSystem.class);
    }
    Set<PipeSystem> chosen = EnumSet.noneOf(PipeSystem.class);
    for (String name : systems) {
      chosen.add(
          PipeCatalogue.findSystem(name)
              .orElseThrow(
                  () ->
                      new BadInputException(
                          "There is no pipe standard \""
                              + ShownText.brief(name)
                              + "\" here; known are "
                              + String.join(", ", PipeCatalogue.systems())
                              + ".")));
    }
    return chosen;
  }
}
