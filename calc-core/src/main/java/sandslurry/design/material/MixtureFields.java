package sandslurry.design.material;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;

/** The fields of how much sand the liquid brings. */
public final class MixtureFields extends Fields<MixtureSpec> {
  private static final Type<Double> MASS = Type.quantity(Measure.FRACTION, "0 %", "64 %");
  private static final Type<Double> RATE = Type.quantity(Measure.MASS_FLOW, "0 kg/s", "500 kg/s");
  private static final String ONE = "one of the four is given";

  private final Field<Optional<Double>> volume =
      optional("volumeFraction", CommonLimits.VOLUME_FRACTION, ONE)
          .label("Sand by volume")
          .means("volume of grains over volume of mixture")
          .such("3 %");
  private final Field<Optional<Double>> mass =
      optional("massFraction", MASS, ONE)
          .label("Sand by mass")
          .means("mass of dry sand over mass of mixture")
          .such("8 %");
  private final Field<Optional<Double>> rate =
      optional("sandRate", RATE, ONE)
          .label("Sand fed at a rate")
          .means("dry sand fed per time; a smaller flow rate then means a thicker mixture")
          .such("2.5 kg/s", "330 lb/min");

  /** The stream of the plant that the line carries. */
  public final Field<Optional<String>> stream =
      optional("stream", Type.text(), ONE)
          .label("Stream of the plant")
          .means("name of the stream of the plant that the line carries")
          .such("diluted");

  /** Declares the fields, of which one is given. */
  public MixtureFields() {
    super("mixture", "sand in the mixture");
    exactlyOne(volume, mass, rate, stream);
  }

  @Override
  protected Optional<MixtureSpec> make(Values values) {
    return List.<Optional<? extends MixtureSpec>>of(
            values.get(volume).map(MixtureSpec.ByVolume::new),
            values.get(mass).map(MixtureSpec.ByMass::new),
            values.get(rate).map(MixtureSpec.ByRate::new),
            values.get(stream).map(MixtureSpec.OfStream::new))
        .stream()
        .filter(Optional::isPresent)
        .findFirst()
        .map(Optional::get);
  }
}
