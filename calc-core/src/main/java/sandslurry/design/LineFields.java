package sandslurry.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.design.line.FlowFields;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.line.RouteFields;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.DilutionFields;
import sandslurry.design.material.DilutionSpec;
import sandslurry.design.material.MixtureFields;
import sandslurry.design.material.MixtureSpec;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.station.ObservedFields;
import sandslurry.design.station.PumpFields;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.ServiceFields;
import sandslurry.design.station.ServiceSpec;
import sandslurry.design.station.ServiceSpec.ObservedSpec;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.design.station.ServiceSpec.StatesSpec;
import sandslurry.design.station.ServiceSpec.SuctionSpec;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The fields of a line and of all that belongs to it. */
public final class LineFields extends Fields<LineSpec> {
  private static final MixtureFields MIXTURE = new MixtureFields();
  private static final DilutionFields DILUTION = new DilutionFields();

  /** The name of the line. */
  final Field<Optional<String>> name =
      optional("name", Type.text(), "Line 1, Line 2 and so on")
          .label("Name")
          .means("what the line is called; no two lines have the same name")
          .such("Pit to lagoon");

  private final Field<MixtureSpec> mixture =
      needed("mixture", MIXTURE)
          .label("Sand in the mixture")
          .means("how much sand the liquid brings");
  private final Field<Optional<DilutionSpec>> dilution =
      optional("dilution", DILUTION, "none")
          .label("Dilution")
          .means(
              "a thinner liquid, to see what adding it would do to the line; the solids of the"
                  + " carrier must be known");
  private final Field<FlowSpec> flow =
      needed("flow", new FlowFields())
          .label("Flow rate of mixture")
          .means("the flow rates between which the line really runs; it is judged at all of them");
  private final Field<RouteSpec> route =
      needed("route", new RouteFields()).label("Transfer line").means("the pipes of the line");
  private final Field<Optional<PumpSpec>> pump =
      optional("pump", PumpFields.kinds(), "gravity, or not chosen yet")
          .label("Pump")
          .means("the pump that drives the line");
  private final Field<Optional<SuctionSpec>> suction =
      optional("suction", new ServiceFields.SuctionFields(), "not judged")
          .label("Suction side")
          .means(
              "the suction side of the pump, the pipe given like a run of the route; of several"
                  + " pumps in parallel each has its own");
  private final Field<Optional<StatesSpec>> states =
      optional("states", new ServiceFields.StatesFields(), "none")
          .label("States beside the design")
          .means("the states in which the line is judged beside the design");
  private final Field<Optional<OperationSpec>> operation =
      optional("operation", new ServiceFields.OperationFields(), "not judged")
          .label("A day of pumping, and the flush")
          .means("a day of pumping, how it stops, and the flush");
  private final Field<Optional<ObservedSpec>> observed =
      optional("observed", new ObservedFields(), "none")
          .label("Reading on site")
          .means(
              "a pressure and a flow rate read on a line that exists: the program says what"
                  + " explains them");

  LineFields() {
    super("line", "line");
    begins("{\"mixture\": {}, \"flow\": {}, \"route\": {\"runs\": [{}]}}");
    onlyWhen(suction, seen -> seen.has(pump), "belongs to a pump, and there is none");
    rule(
        states,
        List.of(),
        values -> values.has(pump) || values.get(states).flatMap(StatesSpec::wornHead).isEmpty(),
        values -> "has a worn pump, and there is no pump");
  }

  /** Holds the dilution of a line against the liquid that it thins. */
  void checkDilution(Values line, CarrierSpec liquid) {
    for (Values group : line.inside(dilution)) {
      OptionalDouble own = liquid.solids();
      if (own.isEmpty()) {
        group.problem(
            DILUTION.solids,
            "needs a carrier whose own solids are known: manure by its solids, or a rheology with"
                + " \"totalSolids\"");
      } else if (group.good(DILUTION.solids) && group.get(DILUTION.solids) > own.getAsDouble()) {
        group.problem(
            DILUTION.solids,
            "must be thinner than the carrier, which has "
                + UnitSystem.METRIC.show(Kind.PERCENT, own.getAsDouble())
                + " solids");
      }
    }
  }

  /**
   * Holds the stream that a line carries against those of the plant.
   *
   * @param line the line
   * @param plant the plant; empty while it is wrong or not there
   * @param given whether there is a plant, right or wrong
   * @return whether the line carries a stream
   */
  boolean checkStream(Values line, Optional<PlantSpec> plant, boolean given) {
    Optional<MixtureSpec.OfStream> carried = line.maybe(mixture).flatMap(MixtureSpec::ofStream);
    if (carried.isEmpty()) {
      return false;
    }
    Values part = line.inside(mixture).get(0);
    if (!given) {
      part.problem(MIXTURE.stream, "needs a plant that has such a stream");
    } else if (plant.isPresent() && !plant.get().streams().contains(carried.get().stream())) {
      part.problem(
          MIXTURE.stream,
          "is no stream of the plant; they are: " + String.join(", ", plant.get().streams()));
    }
    return true;
  }

  /**
   * What one line carries no other can carry as well.
   *
   * @param line the line
   * @param carriers the lines so far by the stream that each carries; this one is added
   */
  void checkCarriedOnce(Values line, Map<String, String> carriers) {
    line.maybe(mixture)
        .flatMap(MixtureSpec::ofStream)
        .map(of -> carriers.putIfAbsent(of.stream(), "\"" + Type.brief(named(line)) + "\""))
        .ifPresent(
            other ->
                line.inside(mixture)
                    .get(0)
                    .problem(
                        MIXTURE.stream,
                        "is carried by "
                            + other
                            + " already: a splitter of the plant divides a stream"));
  }

  /** The name of a line as typed, or by its place where nothing was. */
  String named(Values line) {
    return line.maybe(name)
        .flatMap(typed -> typed)
        .filter(typed -> !typed.isBlank())
        .orElse("Line " + (line.index() + 1));
  }

  @Override
  protected Optional<LineSpec> make(Values values) {
    return Optional.of(
        new LineSpec(
            named(values),
            values.get(mixture),
            values.get(dilution),
            values.get(flow),
            values.get(route),
            values.get(pump),
            new ServiceSpec(
                values.get(states),
                values.get(suction),
                values.get(operation),
                values.get(observed))));
  }
}
