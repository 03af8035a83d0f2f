package sandslurry.plant.unit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Values;
import sandslurry.fact.step.Trace;
import sandslurry.plant.Figure;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.UnitNote;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.screen.CakeSeparator;
import sandslurry.separation.screen.CakeSeparator.CakeResult;
import sandslurry.units.Kind;

/**
 * A coarse screen or a fibre separator.
 *
 * @param place where it stands in the plant
 * @param kind "screen" or "fibreSeparator"
 * @param separator the separator
 */
public record CakeUnit(Place place, String kind, CakeSeparator separator) implements Separator {
  @Override
  public Role role() {
    return Role.SCREENS;
  }

  @Override
  public Optional<Divided> divide(Conditions c, Stream stream, double share) {
    return c.liquor().screening(stream, share).map(feed -> divided(separator.evaluate(feed)));
  }

  private Divided divided(CakeResult result) {
    return result.asAsked()
        ? divided(result.partition())
        : divided(
            result.partition(), UnitNote.Reason.CAKE_DRIER, result.solids(), result.solidsAsked());
  }

  @Override
  public UnitResult at(Conditions c, SteadyBalance balance) {
    double share = seen(balance);
    return c.liquor()
        .screening(balance.feed(name()), share)
        .<UnitResult>map(feed -> new AtBalance(this, feed, share, separator.evaluate(feed)))
        .orElse(UnitResult.NONE);
  }

  @Override
  public Map<String, Part> parts() {
    return Map.of(name(), Part.SEPARATOR);
  }

  @Override
  public Optional<Care> care(Care.Numbers shown) {
    return Optional.of(
        new Care(
            "the cake keeps its shape"
                + shown.figure("dry matter of the cake", ", dry matter ")
                + "; the screen is not blinded; note the hours that it runs.",
            "weigh the cake of an hour"
                + shown.figure("cake", ", in a day ")
                + "; look at the wear of the screen.",
            "the cake is wet or liquid shoots out (worn or plugged); the liquid holds long fibre;"
                + " the recycled liquor thickens from week to week.",
            "wash the screen daily and brush it when less passes."));
  }

  /** What the separator does at a balance. */
  private record AtBalance(CakeUnit unit, UnitFeed feed, double share, CakeResult result)
      implements UnitResult {
    @Override
    public List<Figure> figures() {
      return new Figures()
          .add("cake", Kind.MASS_PER_DAY, result.cakeKgps() * share)
          .add("dry matter of the cake", Kind.PERCENT, result.solids())
          .all();
    }

    @Override
    public void steps(Trace trace) {
      trace.begin(
          unit.kind().equals("screen") ? "screen " + unit.name() : "fibre separator " + unit.name(),
          "");
      unit.separator().evaluate(feed, trace);
    }
  }

  /** A coarse screen or a fibre separator. */
  static final class CakeFields extends UnitFields.HeldFields {
    private final Field<String> cake =
        stream("cake", "Cake stream", "the stream of what is held", "fibre");
    private final Field<String> liquid =
        stream("liquid", "Liquid stream", "the stream of the rest", "pressed");
    private final Field<Optional<Double>> opening =
        optional("opening", SMALL, "optional")
            .label("Opening")
            .means("opening; all sand coarser than it is held")
            .such("10 mm", "0.4 in");
    private final Field<Double> fibre;
    private final Field<Double> fines;
    private final Field<Double> dry;
    private final Field<Double> running;

    CakeFields(String kind, String title, String fibre, String fines, String dry) {
      super(kind, title);
      this.fibre =
          standard("fibreCapture", CommonLimits.SHARE, fibre)
              .label("Fibre captured")
              .means("share of the fibre that is captured")
              .such(fibre);
      this.fines =
          standard("finesCapture", CommonLimits.SHARE, fines)
              .label("Fines captured")
              .means("share of the fines that is captured")
              .such(fines);
      this.dry =
          standard("cakeSolids", CommonLimits.POSITIVE_SHARE, dry)
              .label("Solids of the cake")
              .means("dry matter of the cake, by mass")
              .such(dry);
      this.running = running();
      if (kind.equals("screen")) {
        neededWhen(opening, any -> true, "the opening of the screen");
      }
    }

    @Override
    public List<Ports> ports(Values values) {
      return one(values, List.of(out(values, cake), out(values, liquid)));
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      return Optional.of(
          List.of(
              new CakeUnit(
                  place(values, cake, liquid, running),
                  name(),
                  new CakeSeparator(
                      values.number(opening),
                      values.get(fibre),
                      values.get(fines),
                      values.get(dry)))));
    }
  }
}
