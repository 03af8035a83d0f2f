package sandslurry.assessment.plant.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.plant.PlantCirculation.State;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.assessment.plant.Spread;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.plant.Constituents;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.SandAccount;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * The sand to buy, the one number that goes into a budget, and its parts, which sum to it.
 *
 * <p>What is bought replaces what does not come back to the stalls: sand that never reaches the
 * plant, sand lost to storage, fibre, pits and waste, recovered sand that is not bedded again, and
 * the mineral fines of all that is bought, which leave with the liquor.
 *
 * @param rest the sand that circulates, at rest
 */
record PlantBudget(Spread<State> rest) {
  private static final double YEAR_S = InUnit.DAY.si(PlantTotals.YEAR_D);

  /**
   * The figures of the budget.
   *
   * @param price price of the sand, where the user gave one [1/kg]
   * @param currency its currency; empty when none is named
   */
  List<Figure> figures(Optional<Range> price, String currency) {
    List<Figure> figures = new ArrayList<>();
    figures.add(mass("in a month", s -> PlantSandFigures.grains(s.rest().bought()) / 12));
    figures.add(mass("in a year", s -> PlantSandFigures.grains(s.rest().bought())));
    figures.add(
        mass(
            "of that, in a year: spoiled in stalls and alleys",
            s -> noRounding(s.account().beforeThePlantKgps(), s.account().bedded().sandKgps())));
    for (String where : rest.base().account().lost().keySet()) {
      figures.add(mass(word(where), s -> lost(s.account(), where)));
    }
    figures.add(
        mass(
            "recovered, not reused as bedding",
            s -> s.account().recovered().sandKgps() * (1 - s.account().rebeddedShare())));
    figures.add(
        mass("mineral fines that leave", s -> s.rest().bought().kgps(Constituents.MINERAL_FINES)));
    Range point =
        rest.range(
            s -> 0.01 * s.account().flushed().sandKgps() * s.account().rebeddedShare() * YEAR_S);
    figures.add(new Figure("one point of recovery saves, in a year", Kind.HAULED, point));
    price.ifPresent(
        p ->
            figures.add(
                new Figure(
                    "one point of recovery is worth, in a year"
                        + (currency.isEmpty() ? "" : ", in " + currency),
                    Kind.NUMBER,
                    point.times(p))));
    return figures;
  }

  /** What is left of a difference of two large numbers is none. */
  private static double noRounding(double part, double whole) {
    return part > 1e-9 * whole ? part : 0;
  }

  private static String word(String where) {
    return where.equals(Use.SETTLED.word())
        ? "settled and dug out"
        : where.equals(Use.FIBRE.word()) || where.equals(Use.WASTE.word())
            ? "lost with " + where
            : "lost to " + where;
  }

  private static double lost(SandAccount account, String where) {
    Stream stream = account.lost().get(where);
    return stream == null ? 0 : stream.sandKgps();
  }

  private Figure mass(String what, ToDoubleFunction<State> kgps) {
    return rest.figure(what, Kind.HAULED, s -> kgps.applyAsDouble(s) * YEAR_S);
  }
}
