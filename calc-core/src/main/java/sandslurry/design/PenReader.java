package sandslurry.design;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import sandslurry.design.PlantSpec.FlushSpec;
import sandslurry.design.PlantSpec.PenSpec;
import sandslurry.design.PlantSpec.WaterSpec;
import sandslurry.design.UnitSpec.SplitterSpec;
import sandslurry.plant.Range;
import sandslurry.plant.pen.Flush;
import sandslurry.plant.pen.OtherCattle;
import sandslurry.plant.pen.Pen;
import sandslurry.plant.schedule.Batches;
import sandslurry.plant.unit.Splitter;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;

/** Reads the pens of a plant and how they are scraped or flushed. */
final class PenReader {
  private static final Limits<Dimensionless> HEADS = Limits.of(Measure.FRACTION, "0", "100000");
  private static final Limits<Dimensionless> FACTOR = Limits.of(Measure.FRACTION, "0.3", "3");
  private static final Limits<MassFlowRate> MILK =
      Limits.of(Measure.MASS_FLOW, "0 kg/d", "100 kg/d");
  private static final Limits<MassFlowRate> STALL_SAND =
      Limits.of(Measure.MASS_FLOW, "0 kg/d", "200 kg/d");
  private static final Limits<Time> INTERVAL = Limits.of(Measure.TIME, "0.1 h", "72 h");
  private static final Limits<Volume> FLUSH = Limits.of(Measure.VOLUME, "0.1 m3", "1000 m3");
  private static final Limits<VolumetricFlowRate> RELEASE =
      Limits.of(Measure.FLOW, "0.001 m3/s", "10 m3/s");
  private static final Limits<Dimensionless> ALLEY_SLOPE =
      Limits.of(Measure.FRACTION, "0.1 %", "10 %");

  /** How long a scraping lasts unless it is given: common practice, no source. */
  private static final double SCRAPING_S = 1800;

  private final PlantConnections plant;

  PenReader(PlantConnections plant) {
    this.plant = plant;
  }

  Optional<PenSpec> pen(Section part) {
    Optional<String> name = part.name("name", "the name of the pen");
    Optional<String> stream = part.name("stream", "the stream that the pen makes");
    Optional<Double> cows = part.si("cows", HEADS, "0");
    Optional<Double> milk = part.si("milk", MILK, "36 kg/d");
    Map<OtherCattle, Double> others = new EnumMap<>(OtherCattle.class);
    part.si("dryCows", HEADS, "0").ifPresent(n -> others.put(OtherCattle.DRY_COW, n));
    part.si("heifers", HEADS, "0").ifPresent(n -> others.put(OtherCattle.HEIFER, n));
    part.si("calves", HEADS, "0").ifPresent(n -> others.put(OtherCattle.CALF, n));
    Optional<Range> factor = part.range("manureFactor", FACTOR, "1");
    Optional<Double> stalls = part.si("stalls", HEADS, "0");
    Optional<Range> sand = part.range("sandPerStall", STALL_SAND, "0 kg/d");
    Optional<Range> water = part.range("water", PlantLimits.WATER, "0 m3/d");
    Optional<Double> interval = part.si("scrapeInterval", INTERVAL, "8 h");
    OptionalDouble first = part.may("firstScraping", PlantLimits.CLOCK);
    OptionalDouble lasts = part.may("scrapeDuration", DesignReader.RUNNING_TIME);
    boolean flushed = part.has("flush");
    Optional<FlushSpec> flush =
        flushed
            ? part.part("flush").flatMap(p -> flush(p, name.orElse(""), stream.orElse("")))
            : Optional.empty();
    part.refuseUnknown();
    Optional<Batches> batches = Optional.empty();
    if (first.isPresent() && interval.isPresent()) {
      double standard =
          flush.map(f -> f.flush().durationS()).orElse(Math.min(SCRAPING_S, interval.get()));
      batches =
          part.built(
              "firstScraping",
              () ->
                  new Batches(
                      first.getAsDouble() % InUnit.ofDays(1),
                      interval.get(),
                      lasts.orElse(standard)));
      if (batches.isEmpty()) {
        return Optional.empty();
      }
    }
    if (flushed && flush.isEmpty()) {
      return Optional.empty();
    }
    Optional<Batches> when = batches;
    if (cows.isPresent()
        && others.size() == OtherCattle.values().length
        && !(cows.get() > 0)
        && others.values().stream().noneMatch(heads -> heads > 0)) {
      part.problem("cows", "a pen needs cows or other cattle");
    }
    if (!Section.there(name, stream, cows, milk, factor, stalls, sand, water, interval)) {
      return Optional.empty();
    }
    return part.built(
        "name",
        () ->
            new PenSpec(
                new Pen(
                    name.get(),
                    cows.get(),
                    milk.get(),
                    others,
                    factor.get(),
                    stalls.get(),
                    sand.get(),
                    water.get(),
                    InUnit.ofDays(1) / interval.get()),
                flush.isPresent() ? scraped(name.get()) : stream.get(),
                when,
                flush));
  }

  /** The manure of a flushed pen before the water comes to it. */
  private static String scraped(String pen) {
    return "manure of " + pen;
  }

  private Optional<FlushSpec> flush(Section part, String pen, String stream) {
    Optional<String> water = part.name("in", "the stream of flush water");
    Optional<Double> volume = part.si("volume", FLUSH);
    Optional<Double> rate = part.si("rate", RELEASE);
    Optional<Double> length = part.si("length", PlantLimits.SIDE);
    Optional<Double> width = part.si("width", PlantLimits.SIDE);
    Optional<Double> slope = part.si("slope", ALLEY_SLOPE);
    Optional<Double> manning =
        part.si("manning", DesignReader.MANNING, String.valueOf(Flush.ALLEY_MANNING));
    part.refuseUnknown();
    if (pen.isEmpty() || stream.isEmpty() || water.isEmpty()) {
      return Optional.empty();
    }
    String unit = "Flush of " + pen;
    List<String> in = List.of(scraped(pen), water.get());
    plant.connect(part, unit, in, List.of(stream));
    if (!Section.there(volume, rate, length, width, slope, manning)) {
      return Optional.empty();
    }
    plant.add(new SplitterSpec(Splitter.mixing(unit, in, stream), "flush"));
    return Optional.of(
        new FlushSpec(
            unit,
            water.get(),
            new OpenChannel(width.get(), slope.get(), manning.get()),
            length.get(),
            volume.get(),
            rate.get()));
  }

  /** Flush water must be something that can be let out in batches. */
  void checkFlushWaters(List<Section> parts, List<PenSpec> pens, List<WaterSpec> waters) {
    Set<String> known = plant.settable(waters);
    for (int i = 0; i < pens.size(); i++) {
      Optional<FlushSpec> flush = pens.get(i).flush();
      if (flush.isPresent() && !known.contains(flush.get().water())) {
        parts
            .get(i)
            .problem(
                "flush",
                "\"in\" must be fresh water or pumped from a pit or a storage; those are: "
                    + known.stream().sorted().collect(Collectors.joining(", ")));
      }
    }
  }
}
