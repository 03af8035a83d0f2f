package sandslurry.design.plant;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.design.plant.PlantSpec.FlushSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Span;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.Range;
import sandslurry.plant.pen.Flush;
import sandslurry.plant.pen.OtherCattle;
import sandslurry.plant.pen.Pen;
import sandslurry.plant.schedule.Batches;
import sandslurry.plant.unit.Splitter;
import sandslurry.plant.unit.SplitterUnit;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;

/** The fields of a pen, and of how it is scraped or flushed. */
final class PenFields extends Fields<PenSpec> {
  private static final Type<Double> HEADS = Type.quantity(Measure.NUMBER, "0", "100000");
  private static final Type<Double> MILK = Type.quantity(Measure.MASS_FLOW, "0 kg/d", "100 kg/d");
  private static final Type<Double> STALL_SAND =
      Type.quantity(Measure.MASS_FLOW, "0 kg/d", "200 kg/d");
  private static final Type<Double> INTERVAL = Type.quantity(Measure.TIME, "0.1 h", "72 h");

  /** How long a scraping lasts unless it is given: common practice, no source. */
  private static final double SCRAPING_S = 1800;

  private static final FlushFields FLUSH = new FlushFields();

  final Field<String> name =
      needed("name", Type.name("the name of the pen"))
          .label("Name")
          .means("name of the pen")
          .such("North pen");
  final Field<String> stream =
      needed("stream", Type.name("the stream that the pen makes"))
          .label("Stream that it makes")
          .means("name of the stream that the pen makes, manure and flush water together")
          .such("manure north");
  private final Field<Double> cows =
      standard("cows", HEADS, "0").label("Lactating cows").means("lactating cows").such("300");
  private final Field<Double> milk =
      standard("milk", MILK, "36 kg/d")
          .label("Milk of a cow")
          .means("milk of a cow")
          .such("36 kg/d", "80 lb/d");
  private final Field<Double> dry =
      standard("dryCows", HEADS, "0").label("Dry cows").means("dry cows").such("40");
  private final Field<Double> heifers =
      standard("heifers", HEADS, "0").label("Heifers").means("heifers").such("60");
  private final Field<Double> calves =
      standard("calves", HEADS, "0").label("Calves").means("calves").such("20");
  private final Field<Range> factor =
      standard(
              "manureFactor",
              new Span<>(Type.quantity(Measure.FRACTION, "0.3", "3"), Range::new),
              "1")
          .label("Manure over equation")
          .means("manure over that of the equation")
          .such("1");
  private final Field<Double> stalls =
      standard("stalls", HEADS, "0")
          .label("Sand-bedded stalls")
          .means("stalls bedded with sand")
          .such("300");
  private final Field<Range> sand =
      standard("sandPerStall", new Span<>(STALL_SAND, Range::new), "0 kg/d")
          .label("Dry sand a stall")
          .means("bedding sand use of a stall, dry")
          .such("20 kg/d", "50 lb/d");
  private final Field<Range> water =
      standard("water", new Span<>(CommonLimits.WATER, Range::new), "0 m3/d")
          .label("Water of the pen")
          .means("wash, drinking and rain water of the whole pen")
          .such("3 m3/d", "900 gal/d");
  private final Field<Double> interval =
      standard("scrapeInterval", INTERVAL, "8 h")
          .label("Scraping interval")
          .means("time between two scrapings or flushes")
          .such("8 h");
  private final Field<Optional<Double>> first =
      optional("firstScraping", CommonLimits.CLOCK, "fed evenly all day")
          .label("First one at")
          .means("time of the day at which one of them starts; the interval then divides 24 h")
          .such("5 h");
  private final Field<Optional<Double>> lasts =
      optional("scrapeDuration", CommonLimits.RUNNING_TIME, "30 min, or the flush")
          .label("Each comes within")
          .means("how long the manure of one scraping or flush takes to come")
          .such("30 min");
  final Field<Optional<FlushFields.Water>> flush =
      optional("flush", FLUSH, "it is scraped")
          .label("It is flushed instead of scraped")
          .means("how the pen is flushed");

  PenFields() {
    super("pen", "pen");
    shownWhen(lasts, seen -> seen.has(first));
    rule(
        cows,
        List.of(dry, heifers, calves),
        values ->
            values.get(cows) > 0 || others(values).values().stream().anyMatch(heads -> heads > 0),
        values -> "a pen needs cows or other cattle");
  }

  private Map<OtherCattle, Double> others(Values values) {
    Map<OtherCattle, Double> others = new EnumMap<>(OtherCattle.class);
    others.put(OtherCattle.DRY_COW, values.get(dry));
    others.put(OtherCattle.HEIFER, values.get(heifers));
    others.put(OtherCattle.CALF, values.get(calves));
    return others;
  }

  @Override
  protected Optional<PenSpec> make(Values values) {
    Optional<FlushSpec> flushed = values.get(flush).map(w -> w.of(values.get(name)));
    Optional<Batches> batches = Optional.empty();
    if (values.get(first).isPresent()) {
      double every = values.get(interval);
      double standard = flushed.map(f -> f.flush().durationS()).orElse(Math.min(SCRAPING_S, every));
      batches =
          values.made(
              first,
              () ->
                  new Batches(
                      values.get(first).get() % InUnit.DAY.si(1),
                      every,
                      values.get(lasts).orElse(standard)));
      if (batches.isEmpty()) {
        return Optional.empty();
      }
    }
    Optional<Batches> when = batches;
    return values.made(
        name,
        () ->
            new PenSpec(
                new Pen(
                    values.get(name),
                    values.get(cows),
                    values.get(milk),
                    others(values),
                    values.get(factor),
                    values.get(stalls),
                    values.get(sand),
                    values.get(water),
                    InUnit.DAY.si(1) / values.get(interval)),
                made(values).orElseThrow(),
                when,
                flushed));
  }

  /** The stream that the pen itself makes, known even where other fields are wrong. */
  Optional<String> made(Values values) {
    return values.has(flush) ? values.maybe(name).map(PenFields::scraped) : values.maybe(stream);
  }

  /** The stream of flush water. */
  Optional<String> water(Values values) {
    return values.inside(flush).stream().findFirst().flatMap(water -> water.maybe(FLUSH.in));
  }

  /** The unit in which the manure of a flushed pen meets the water. */
  Optional<SplitterUnit> meeting(Values values) {
    Optional<String> in = water(values);
    if (!values.good(name, stream) || in.isEmpty()) {
      return Optional.empty();
    }
    String pen = values.get(name);
    return Optional.of(
        new SplitterUnit(
            Splitter.mixing(flushOf(pen), List.of(scraped(pen), in.get()), values.get(stream)),
            "flush"));
  }

  private static String flushOf(String pen) {
    return "Flush of " + pen;
  }

  /** The manure of a flushed pen before the water comes to it. */
  private static String scraped(String pen) {
    return "manure of " + pen;
  }

  /** How a pen is flushed. */
  private static final class FlushFields extends Fields<FlushFields.Water> {
    private static final Type<Double> VOLUME = Type.quantity(Measure.VOLUME, "0.1 m3", "1000 m3");
    private static final Type<Double> RATE = Type.quantity(Measure.FLOW, "0.001 m3/s", "10 m3/s");
    private static final Type<Double> SLOPE = Type.quantity(Measure.SLOPE, "0.1 %", "10 %");

    /** A flush, without the name of its pen. */
    private record Water(String in, OpenChannel alley, double length, double volume, double rate) {
      FlushSpec of(String pen) {
        return new FlushSpec(flushOf(pen), in, alley, length, volume, rate);
      }
    }

    private final Field<String> in =
        needed("in", Type.name("the stream of flush water"))
            .label("Stream of flush water")
            .means(
                "name of the stream of flush water: fresh water, or pumped from a pit or a storage")
            .such("flush water");
    private final Field<Double> volume =
        needed("volume", VOLUME)
            .label("Water of one flush")
            .means("volume of water of one flush")
            .such("40 m3", "10000 gal");
    private final Field<Double> rate =
        needed("rate", RATE)
            .label("Rate of the flush")
            .means("rate at which it is let out")
            .such("0.4 m3/s", "6500 gpm");
    private final Field<Double> length =
        needed("length", CommonLimits.SIDE)
            .label("Alley length")
            .means("length of the alley")
            .such("90 m", "300 ft");
    private final Field<Double> width =
        needed("width", CommonLimits.SIDE)
            .label("Alley width")
            .means("width of the alley")
            .such("3.6 m", "12 ft");
    private final Field<Double> slope =
        needed("slope", SLOPE).label("Alley slope").means("slope of the alley").such("3 %");
    private final Field<Double> manning =
        standard("manning", CommonLimits.MANNING, String.valueOf(Flush.ALLEY_MANNING))
            .label("Alley, Manning's n")
            .means("Manning's roughness n of the alley")
            .such("0.02");

    FlushFields() {
      super("flush", "flush");
    }

    @Override
    protected Optional<Water> make(Values values) {
      return Optional.of(
          new Water(
              values.get(in),
              new OpenChannel(values.get(width), values.get(slope), values.get(manning)),
              values.get(length),
              values.get(volume),
              values.get(rate)));
    }
  }
}
