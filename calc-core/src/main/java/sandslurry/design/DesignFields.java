package sandslurry.design;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.criteria.CriteriaFields;
import sandslurry.design.lane.LaneFields;
import sandslurry.design.lane.LaneSpec;
import sandslurry.design.material.CarrierFields;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.Sand;
import sandslurry.design.material.SandFields;
import sandslurry.design.plant.PlantFields;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.station.FeedSpec;
import sandslurry.design.station.GravityFields;
import sandslurry.design.station.ServiceFields;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.UnitSystem;

/** The fields of a design: all that a design file may hold. */
public final class DesignFields extends Fields<Design> {
  /** Version of the design file that this program writes; it reads version 1 too. */
  public static final int FORMAT_VERSION = 2;

  private static final String READS = "this program reads versions 1 and " + FORMAT_VERSION;

  /** The fields of a line. */
  public static final LineFields LINE = new LineFields();

  /** The fields of a design. */
  public static final DesignFields DESIGN = new DesignFields();

  private final Field<Integer> version =
      needed("formatVersion", Type.count(999999).wanted(READS))
          .label("Format")
          .means("version of the file format, which is " + FORMAT_VERSION)
          .such("2");
  private final Field<String> title =
      standard("title", Type.text(), "Untitled design")
          .label("Title")
          .means("heading of the report")
          .such("Wash line");
  private final Field<Optional<String>> notes =
      optional("notes", Type.text(), "none").label("Notes").means("free text, not used");
  private final Field<UnitSystem> units =
      standard(
              "units",
              Type.choice(
                  Arrays.asList(UnitSystem.values()),
                  system -> system == UnitSystem.METRIC ? "metric" : "US",
                  system -> system == UnitSystem.METRIC ? "metric units" : "US customary units"),
              "metric")
          .label("Report in")
          .means("units of the report; every input may be typed in metric or US units");

  @SuppressWarnings("unused") // the report reads its texts from the document
  private final Field<Optional<List<String>>> titleBlock =
      optional("titleBlock", new TitleBlockFields(), "left free to be filled in")
          .label("Title block")
          .means("who and what the report is for");

  private final Field<Sand> sand =
      needed("sand", new SandFields()).label("Sand").means("the bedding sand");
  private final Field<CarrierSpec> carrier =
      needed("carrier", CarrierFields.KINDS)
          .label("Carrier liquid")
          .means("the liquid, free of sand");
  private final Field<List<LineSpec>> lines =
      list("lines", LINE)
          .label("Lines")
          .means("the lines, each with its mixture, flow rates, route and pump; each is judged");
  private final Field<Optional<ScrewSpec>> screw =
      optional("screw", new ServiceFields.ScrewFields(), "none")
          .label("Screw conveyor")
          .means("a screw conveyor (floor auger) that feeds the pit: a check of its capacity");
  private final Field<Optional<GravityRunSpec>> gravity =
      optional("gravityRun", new GravityFields(), "none")
          .label("Gravity pipe")
          .means("a gravity pipe that runs part full, before or after the pump");
  private final Field<Optional<LaneSpec>> lane =
      optional("lane", new LaneFields(), "no lane")
          .label("Settling lane")
          .means("a settling lane by itself");
  private final Field<Optional<PlantSpec>> plant =
      optional("plant", new PlantFields(), "no plant")
          .label("Plant")
          .means("from the pens to the storage: units connected by streams of equal name");
  private final Field<Criteria> criteria =
      standard("criteria", new CriteriaFields(), "")
          .label("Criteria")
          .means("what the design is judged by");

  private DesignFields() {
    super("", "design");
    rule(
        version,
        List.of(),
        values -> values.get(version) == FORMAT_VERSION,
        values ->
            values.get(version) == 1
                ? "\"lines\" belong to version " + FORMAT_VERSION + ", and this says version 1"
                : READS);
    rule(
        lines,
        List.of(),
        values ->
            values.has(lane)
                || values.has(plant)
                || values.has(screw)
                || values.has(gravity)
                || !values.get(lines).isEmpty(),
        values ->
            "is missing: a design has a line, a lane, a plant, a screw or a gravity pipe, or"
                + " several");
  }

  @Override
  protected void check(Values values) {
    List<Values> each = values.inside(lines);
    Set<String> names = new HashSet<>();
    Map<String, String> carriers = new HashMap<>();
    values
        .maybe(plant)
        .flatMap(p -> p)
        .ifPresent(
            p -> p.gravityLines().forEach(line -> carriers.put(line.stream(), "a gravity line")));
    boolean carries = false;
    for (Values line : each) {
      if (!names.add(LINE.named(line))) {
        line.problem(LINE.name, "is the name of another line too: " + LINE.named(line));
      }
      values.maybe(carrier).ifPresent(liquid -> LINE.checkDilution(line, liquid));
      carries |= LINE.checkStream(line, values.maybe(plant).flatMap(p -> p), values.has(plant));
      LINE.checkCarriedOnce(line, carriers);
    }
    if (carries) {
      checkCarried(values);
    }
  }

  /** A line that carries a stream of the plant takes liquid and sand from there alone. */
  private void checkCarried(Values values) {
    if (values.good(carrier) && !values.get(carrier).isWater()) {
      values.problem(
          carrier, "must be water, the water of the plant: the liquor comes from the stream");
    }
    if (values.has(lane)) {
      values.problem(lane, "is a unit of the plant when the line carries a stream of the plant");
    }
  }

  @Override
  protected Optional<Design> make(Values values) {
    return Optional.of(
        new Design(
            values.get(title),
            values.get(units),
            values.get(sand),
            values.get(carrier),
            values.get(lines),
            values.get(lane),
            new FeedSpec(values.get(screw), values.get(gravity)),
            values.get(plant),
            values.get(criteria)));
  }
}
