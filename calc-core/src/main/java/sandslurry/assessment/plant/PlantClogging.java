package sandslurry.assessment.plant;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.assessment.plant.PlantResult.Clogged;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.SteadyBalance;

/**
 * Looks for a second steady state: the one that a plant comes to whose pits are full of thick
 * liquor at first. Thick liquor settles less sand and is caught less, so that it may keep itself
 * thick.
 *
 * @param model the plant
 */
public record PlantClogging(PlantModel model) {
  /** Liquors that differ by less than this share of their solids are the same. */
  private static final double SAME_LIQUOR = 0.03;

  /** Recoveries that differ by less than this are the same. */
  private static final double SAME_RECOVERY = 0.01;

  private static final int HALVINGS = 7;

  /**
   * The second steady state of a mode, with the liquor that tips the plant into it.
   *
   * @param mode the mode
   * @param thin its steady state that starts from water
   * @return both states; empty when thick liquor leads back to the first
   */
  public Optional<Clogged> of(Mode mode, SteadyBalance thin) {
    Stream thick = thick();
    if (model.spec().pits().isEmpty() || model.recycles().isEmpty() || !(thick.totalSolids() > 0)) {
      return Optional.empty();
    }
    LiquorLimit one = model.totals().limit(thin.streams());
    Optional<LiquorLimit> other = from(mode, thick, 1);
    if (other.isPresent() && same(one, other.get())) {
      return Optional.empty();
    }
    double low = 0;
    double high = 1;
    for (int k = 0; k < HALVINGS; k++) {
      double middle = (low + high) / 2;
      boolean back = from(mode, thick, middle).map(end -> same(one, end)).orElse(false);
      low = back ? middle : low;
      high = back ? high : middle;
    }
    return Optional.of(new Clogged(one, other, thick.totalSolids(), high * thick.totalSolids()));
  }

  /** The manure of all pens as it is made, its sand left out. */
  private Stream thick() {
    Constituents constituents = model.constituents();
    double[] flows = new double[constituents.count()];
    for (PenSpec pen : model.spec().pens()) {
      Stream manure = model.manure(pen, Case.BASE);
      for (int i = 0; i < Constituents.SAND; i++) {
        flows[i] += manure.kgps(i);
      }
    }
    return Stream.of(constituents, flows);
  }

  /** What a mode comes to from pits whose liquor holds a share of the solids of thick liquor. */
  private Optional<LiquorLimit> from(Mode mode, Stream thick, double share) {
    double solids = share * thick.totalSolids();
    double water = solids > 0 ? thick.solidsKgps() / solids - thick.massKgps() : 0;
    Stream liquor =
        solids > 0
            ? thick.plus(model.constituents().water(Math.max(0, water)))
            : model.constituents().water(1);
    Map<String, Stream> filling = new LinkedHashMap<>();
    model.spec().pits().forEach(pit -> filling.put(pit.name(), liquor));
    return mode.network()
        .solve(mode.feeds(), filling)
        .balance()
        .map(balance -> model.totals().limit(balance.streams()));
  }

  private static boolean same(LiquorLimit one, LiquorLimit other) {
    return Math.abs(other.solved() - one.solved())
            <= SAME_LIQUOR * Math.max(one.solved(), other.solved())
        && Math.abs(other.sandCapture() - one.sandCapture()) <= SAME_RECOVERY;
  }
}
