package sandslurry.design.material;

import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;

/** The fields of what the mixture might be diluted with. */
public final class DilutionFields extends Fields<DilutionSpec> {
  private static final Type<Double> RATIO = Type.quantity(Measure.FRACTION, "0.5", "50");

  /** Total solids of the liquid that is added, by mass. */
  public final Field<Double> solids =
      standard("totalSolids", CommonLimits.TOTAL_SOLIDS, "0 %")
          .label("Solids of that liquid")
          .means("total solids of the liquid added, by mass")
          .such("0.5 %");

  private final Field<Double> most =
      standard("mostRatio", RATIO, "10")
          .label("Most volumes to one")
          .means("most of that liquid, over the volume of undiluted mixture")
          .such("10");

  /** Declares the fields. */
  public DilutionFields() {
    super("dilution", "dilution");
  }

  @Override
  protected Optional<DilutionSpec> make(Values values) {
    return Optional.of(new DilutionSpec(values.get(solids), values.get(most)));
  }
}
