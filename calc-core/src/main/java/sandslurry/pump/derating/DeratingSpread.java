package sandslurry.pump.derating;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.material.Slurry;
import sandslurry.pump.derating.SolidsDeratings.Derating;

/**
 * What all deratings for solids say of one case: the spread is the measure of what is not known.
 *
 * @param each one derating for each correlation that could be asked; never empty
 */
public record DeratingSpread(List<Derating> each) {
  private static final Comparator<Derating> BY_HEAD =
      Comparator.comparingDouble(derating -> derating.headRatio().value());

  /** Copies the list. */
  public DeratingSpread {
    each = List.copyOf(each);
    if (each.isEmpty()) {
      throw new IllegalArgumentException("a spread needs one derating or more");
    }
  }

  /**
   * Asks every correlation of the catalogue; without the impeller, those that do not need it.
   *
   * @param slurry sand and carrier
   * @param impellerDiameterM diameter of the impeller, if known [m]
   * @return the spread
   */
  public static DeratingSpread of(Slurry slurry, OptionalDouble impellerDiameterM) {
    List<Derating> each = new ArrayList<>();
    for (SolidsDerating model : SolidsDeratings.FAMILY.all()) {
      if (impellerDiameterM.isPresent() || !model.needsImpellerDiameter()) {
        each.add(
            new Derating(
                model,
                model.headRatio(slurry, impellerDiameterM),
                model.efficiencyRatio(slurry, impellerDiameterM)));
      }
    }
    return new DeratingSpread(each);
  }

  /**
   * The derating that takes the most head.
   *
   * @return that with the least head ratio
   */
  public Derating mostSevere() {
    return each.stream().min(BY_HEAD).orElseThrow();
  }
}
