package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Values;
import sandslurry.separation.screen.CakeSeparator;

/**
 * A coarse screen or a fibre separator.
 *
 * @param name its name
 * @param kind "screen" or "fibreSeparator"
 * @param inlets streams in
 * @param cake stream of what is held
 * @param liquid stream of the rest
 * @param runningShare share of the day that it runs
 * @param separator the separator
 */
public record CakeUnit(
    String name,
    String kind,
    List<String> inlets,
    String cake,
    String liquid,
    double runningShare,
    CakeSeparator separator)
    implements PlantUnit {
  @Override
  public List<String> outlets() {
    return List.of(cake, liquid);
  }

  @Override
  public List<String> byGravity() {
    return List.of(liquid);
  }

  /** A coarse screen or a fibre separator. */
  static final class CakeFields extends UnitFields.HeldFields {
    private final Field<String> cake =
        stream("cake", "Cake stream", "the stream of what is held", "fibre");
    private final Field<String> liquid =
        stream("liquid", "Liquid stream", "the stream of the rest", "pressed");
    private final Field<Optional<Double>> opening =
        optional(
            "opening",
            SMALL,
            "optional",
            "Opening",
            "opening; all sand coarser than it is held",
            "10 mm",
            "0.4 in");
    private final Field<Double> fibre;
    private final Field<Double> fines;
    private final Field<Double> dry;
    private final Field<Double> running;

    CakeFields(String kind, String title, String fibre, String fines, String dry) {
      super(kind, title);
      this.fibre =
          standard(
              "fibreCapture",
              CommonLimits.SHARE.si(),
              fibre,
              "Fibre captured",
              "share of the fibre that is captured",
              fibre);
      this.fines =
          standard(
              "finesCapture",
              CommonLimits.SHARE.si(),
              fines,
              "Fines captured",
              "share of the fines that is captured",
              fines);
      this.dry =
          standard(
              "cakeSolids",
              CommonLimits.POSITIVE_SHARE.si(),
              dry,
              "Solids of the cake",
              "dry matter of the cake, by mass",
              dry);
      this.running = running("20 h");
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
                  values.get(name),
                  name(),
                  values.get(in),
                  values.get(cake),
                  values.get(liquid),
                  values.get(running),
                  new CakeSeparator(
                      maybe(values.get(opening)),
                      values.get(fibre),
                      values.get(fines),
                      values.get(dry)))));
    }
  }
}
