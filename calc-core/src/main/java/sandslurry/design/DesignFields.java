package sandslurry.design;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.criteria.CriteriaFields;
import sandslurry.design.lane.LaneFields;
import sandslurry.design.lane.LaneSpec;
import sandslurry.design.line.FlowFields;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.line.RouteFields;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.CarrierFields;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.DilutionFields;
import sandslurry.design.material.DilutionSpec;
import sandslurry.design.material.MixtureFields;
import sandslurry.design.material.MixtureSpec;
import sandslurry.design.material.Sand;
import sandslurry.design.material.SandFields;
import sandslurry.design.plant.PlantFields;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.station.ObservedFields;
import sandslurry.design.station.PumpFields;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.ServiceFields;
import sandslurry.design.station.ServiceSpec;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.design.station.ServiceSpec.ObservedSpec;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.design.station.ServiceSpec.StatesSpec;
import sandslurry.design.station.ServiceSpec.SuctionSpec;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The fields of a design: all that a design file may hold. */
public final class DesignFields extends Fields<Design> {
  /** Version of the design file that this program reads and writes. */
  public static final int FORMAT_VERSION = 1;

  private static final MixtureFields MIXTURE = new MixtureFields();
  private static final DilutionFields DILUTION = new DilutionFields();

  /** The fields of a design. */
  public static final DesignFields DESIGN = new DesignFields();

  private static final String NO_ROUTE = "belongs to a route, and there is none";

  private final Field<Integer> version =
      needed(
          "formatVersion",
          Type.count(1, 999999).wanted("this program reads version " + FORMAT_VERSION),
          "Format",
          "version of the file format, which is " + FORMAT_VERSION,
          "1");
  private final Field<String> title =
      standard(
          "title", Type.text(), "Untitled design", "Title", "heading of the report", "Wash line");
  private final Field<Optional<String>> notes =
      optional("notes", Type.text(), "none", "Notes", "free text, not used");
  private final Field<UnitSystem> units =
      standard(
          "units",
          Type.choice(
              Arrays.asList(UnitSystem.values()),
              system -> system == UnitSystem.METRIC ? "metric" : "US",
              system -> system == UnitSystem.METRIC ? "metric units" : "US customary units"),
          "metric",
          "Report in",
          "units of the report; every input may be typed in metric or US units");

  @SuppressWarnings("unused") // the report reads its texts from the document
  private final Field<Optional<List<String>>> titleBlock =
      optional(
          "titleBlock",
          new TitleBlockFields(),
          "left free to be filled in",
          "Title block",
          "who and what the report is for");

  private final Field<Sand> sand = needed("sand", new SandFields(), "Sand", "the bedding sand");
  private final Field<CarrierSpec> carrier =
      needed("carrier", CarrierFields.KINDS, "Carrier liquid", "the liquid, free of sand");
  private final Field<Optional<MixtureSpec>> mixture =
      optional(
          "mixture",
          MIXTURE,
          "needed with a route",
          "Sand in the mixture",
          "how much sand the liquid brings");
  private final Field<Optional<DilutionSpec>> dilution =
      optional(
          "dilution",
          DILUTION,
          "none",
          "Dilution",
          "a thinner liquid, to see what adding it would do to the line; the solids of the carrier"
              + " must be known");
  private final Field<Optional<FlowSpec>> flow =
      optional(
          "flow",
          new FlowFields(),
          "needed with a route",
          "Flow rate of mixture",
          "the flow rates between which the line really runs; it is judged at all of them");
  private final Field<Optional<RouteSpec>> route =
      optional("route", new RouteFields(), "no line", "Transfer line", "the line");
  private final Field<Optional<PumpSpec>> pump =
      optional(
          "pump",
          PumpFields.kinds(),
          "gravity, or not chosen yet",
          "Pump",
          "the pump that drives the line");
  private final Field<Optional<SuctionSpec>> suction =
      optional(
          "suction",
          new ServiceFields.SuctionFields(),
          "not judged",
          "Suction side",
          "the suction side of the pump, the pipe given like a run of the route; of several pumps"
              + " in parallel each has its own");
  private final Field<Optional<StatesSpec>> states =
      optional(
          "states",
          new ServiceFields.StatesFields(),
          "none",
          "States beside the design",
          "the states in which the line is judged beside the design");
  private final Field<Optional<OperationSpec>> operation =
      optional(
          "operation",
          new ServiceFields.OperationFields(),
          "not judged",
          "A day of pumping, and the flush",
          "a day of pumping, how it stops, and the flush");
  private final Field<Optional<ScrewSpec>> screw =
      optional(
          "screw",
          new ServiceFields.ScrewFields(),
          "none",
          "Screw conveyor",
          "a screw conveyor (floor auger) that feeds the pit: a check of its capacity");
  private final Field<Optional<GravityRunSpec>> gravity =
      optional(
          "gravityRun",
          new ServiceFields.GravityRunFields(),
          "none",
          "Gravity pipe",
          "a gravity pipe that runs part full, before or after the pump");
  private final Field<Optional<ObservedSpec>> observed =
      optional(
          "observed",
          new ObservedFields(),
          "none",
          "Reading on site",
          "a pressure and a flow rate read on a line that exists: the program says what explains"
              + " them");
  private final Field<Optional<LaneSpec>> lane =
      optional("lane", new LaneFields(), "no lane", "Settling lane", "a settling lane by itself");
  private final Field<Optional<PlantSpec>> plant =
      optional(
          "plant",
          new PlantFields(),
          "no plant",
          "Plant",
          "from the pens to the storage: units connected by streams of equal name");
  private final Field<Criteria> criteria =
      standard("criteria", new CriteriaFields(), "", "Criteria", "what the design is judged by");

  private DesignFields() {
    super("", "design");
    rule(
        version,
        List.of(),
        values -> values.get(version) == FORMAT_VERSION,
        values -> "this program reads version " + FORMAT_VERSION + " only");
    neededWhen(
        route,
        seen -> !seen.has(lane) && !seen.has(plant),
        "a design has a route, a lane or a plant, or several");
    neededWhen(mixture, seen -> seen.has(route), "a line carries a mixture");
    neededWhen(flow, seen -> seen.has(route), "a line has a flow rate");
    onlyWhen(pump, seen -> seen.has(route), "needs a route to pump through");
    onlyWhen(flow, seen -> seen.has(route), NO_ROUTE + "; a lane has a flow of its own");
    onlyWhen(mixture, seen -> seen.has(route), NO_ROUTE + "; a lane has a sandVolumeFraction");
    onlyWhen(states, seen -> seen.has(route), NO_ROUTE);
    onlyWhen(operation, seen -> seen.has(route), NO_ROUTE);
    onlyWhen(observed, seen -> seen.has(route), NO_ROUTE);
    shownWhen(dilution, seen -> seen.has(route));
    onlyWhen(suction, seen -> seen.has(pump), "belongs to a pump, and there is none");
    rule(
        states,
        List.of(),
        values -> values.has(pump) || values.get(states).flatMap(StatesSpec::wornHead).isEmpty(),
        values -> "has a worn pump, and there is no pump");
  }

  @Override
  protected void check(Values values) {
    values.inside(dilution).forEach(group -> checkDilution(values, group));
    if (values.maybe(mixture).flatMap(m -> m).orElse(null) instanceof MixtureSpec.OfStream m) {
      checkStream(values, m.stream());
    }
  }

  private void checkDilution(Values values, Values group) {
    Optional<CarrierSpec> liquid = values.maybe(carrier);
    if (liquid.isEmpty()) {
      return;
    }
    Optional<Quantity<Dimensionless>> own = CarrierFields.solids(liquid.get());
    if (own.isEmpty()) {
      group.problem(
          DILUTION.solids,
          "needs a carrier whose own solids are known: manure by its solids, or a rheology with"
              + " \"totalSolids\"");
    } else if (group.good(DILUTION.solids)
        && Measure.FRACTION.si(group.get(DILUTION.solids)) > Measure.FRACTION.si(own.get())) {
      group.problem(
          DILUTION.solids,
          "must be thinner than the carrier, which has "
              + UnitSystem.METRIC.show(Kind.PERCENT, Measure.FRACTION.si(own.get()))
              + " solids");
    }
  }

  /** A line that carries a stream of the plant takes liquid and sand from there alone. */
  private void checkStream(Values values, String stream) {
    Values part = values.inside(mixture).get(0);
    Optional<PlantSpec> made = values.maybe(plant).flatMap(p -> p);
    if (!values.has(plant)) {
      part.problem(MIXTURE.stream, "needs a plant that has such a stream");
    } else if (made.isPresent() && !made.get().streams().contains(stream)) {
      part.problem(
          MIXTURE.stream,
          "is no stream of the plant; they are: " + String.join(", ", made.get().streams()));
    }
    if (values.good(carrier) && !(values.get(carrier) instanceof CarrierSpec.WaterSpec)) {
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
            values.get(mixture),
            values.get(dilution),
            values.get(flow),
            values.get(route),
            values.get(pump),
            values.get(lane),
            new ServiceSpec(
                values.get(states),
                values.get(suction),
                values.get(operation),
                values.get(screw),
                values.get(gravity),
                values.get(observed)),
            values.get(plant),
            values.get(criteria)));
  }
}
