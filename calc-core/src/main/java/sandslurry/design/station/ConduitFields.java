package sandslurry.design.station;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;

/**
 * The fields of a pipe that runs part full by gravity, or of an open channel.
 *
 * @param <S> what is read from them and others
 */
public abstract class ConduitFields<S> extends Fields<S> {
  /** Its bore. */
  protected final Field<Optional<Double>> bore =
      optional("bore", CommonLimits.BORE, "an open channel, where there may be one")
          .label("Bore of gravity pipe")
          .means("inside diameter")
          .such("300 mm", "12 in");

  /** Its slope. */
  protected final Field<Optional<Double>> slope =
      optional(
              "slope",
              Type.quantity(Measure.SLOPE, "0.01 %", "30 %"),
              "what the levels of its two units leave over its length")
          .label("Slope of gravity pipe")
          .means("fall over length")
          .such("1 %");

  private final Field<Double> manning =
      standard("manning", CommonLimits.MANNING, "0.013")
          .label("Manning's n of pipe")
          .means("Manning's roughness n of pipe or channel")
          .such("0.013");

  /**
   * Declares the fields and the rules between them.
   *
   * @param name the name of the group in files
   * @param title its title
   */
  protected ConduitFields(String name, String title) {
    super(name, title);
  }

  /**
   * Pipe or channel.
   *
   * @param values the values of these fields
   * @param section its cross-section
   * @param length its length, if it is given [m]
   * @param freeboardM how far it ends above the water that it flows into [m]
   * @return pipe or channel
   */
  protected final GravitySpec conduit(
      Values values, GravitySpec.Section section, OptionalDouble length, double freeboardM) {
    return new GravitySpec(section, values.number(slope), length, values.get(manning), freeboardM);
  }
}
