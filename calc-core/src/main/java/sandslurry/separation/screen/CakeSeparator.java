package sandslurry.separation.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.sand.GrainRange;
import sandslurry.separation.Numbers;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;
import sandslurry.units.Kind;

/**
 * A unit that takes a cake of given dryness out of a liquor: a coarse screen for trash, or a fibre
 * separator (screen, press, roller) of given capture.
 *
 * <p>What it catches is an input, from its maker's test or from use; no formula is offered. Of
 * total solids, screens on dilute liquor catch 15 to 30 % and presses on slurry 30 to 50 %, with a
 * cake of 25 to 32 % dry matter (from memory, unverified). The liquor that stays in the cake
 * follows from the dryness of the cake:
 *
 * <pre>liquor in the cake = D (1 − s)/(s − c)</pre>
 *
 * <p>D dry matter caught; s dry matter over mass of cake; c dry matter over mass of that liquor.
 * Sand coarser than the opening is caught; finer sand goes with the liquor.
 *
 * @param openingM opening that holds back all coarser sand; empty when sand simply goes with the
 *     liquor [m]
 * @param fibreCapture share of the fibre caught, 0 to 1
 * @param finesCapture share of the fines caught, 0 to 1
 * @param cakeSolids dry matter over mass of cake, above 0 to 1
 */
public record CakeSeparator(
    OptionalDouble openingM, double fibreCapture, double finesCapture, double cakeSolids) {
  private static final String BALANCE = "balance of dry matter";
  private static final Equation WETTING =
      Equation.of(
          "x",
          "share of the liquor that stays in the cake, as wet as it is to be",
          "D (1 - s) / (s (F + L) - F - L c)",
          Kind.PERCENT,
          BALANCE,
          "D kg/s, s, F kg/s, L kg/s, c");
  private static final Equation WHOLE =
      Equation.search(
          "x",
          "share of the liquor that stays in the cake",
          "all of it: the feed is thicker than the cake is to be",
          Kind.PERCENT,
          BALANCE);
  private static final Equation DRY =
      Equation.of(
          "m_d",
          "dry matter of the cake: fibre, fines, dissolved matter, sand",
          "x_f M_f + x_e M_e + x_d M_d + m_s",
          Kind.MASS_PER_DAY,
          BALANCE,
          "x_f, M_f kg/s, x_e, M_e kg/s, x_d, M_d kg/s, m_s kg/s");
  private static final Equation CAKE =
      Equation.of(
          "m_c",
          "cake",
          "m_d + x m_w",
          Kind.MASS_PER_DAY,
          "balance of mass",
          "m_d kg/s, x, m_w kg/s");
  private static final Equation SOLIDS =
      Equation.of(
          "s_c",
          "dry matter of the cake by mass",
          "m_d/m_c",
          Kind.PERCENT,
          Equation.DEFINITION,
          "m_d kg/s, m_c kg/s");

  /** Checks every bound. */
  public CakeSeparator {
    openingM.ifPresent(opening -> Numbers.positive("the opening", opening, "m"));
    Numbers.share("the capture of fibre", fibreCapture);
    Numbers.share("the capture of fines", finesCapture);
    if (!(cakeSolids > 0 && cakeSolids <= 1)) {
      throw new IllegalArgumentException(
          "dry matter of the cake lies in 0 (excluded) to 1 but was " + cakeSolids);
    }
  }

  /**
   * Divides a feed.
   *
   * @param feed the feed
   * @return the result, whose cake is wetter or drier than asked only where the feed forbids it
   */
  public CakeResult evaluate(UnitFeed feed) {
    return evaluate(feed, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param feed the feed
   * @param trace what keeps the steps
   * @return the result
   */
  public CakeResult evaluate(UnitFeed feed, Trace trace) {
    double liquor = feed.liquidKgps();
    double fines = feed.finesFraction() * liquor;
    double dissolved = feed.dissolvedFraction() * liquor;
    double water = liquor - fines - dissolved;
    double finesCaught = finesCapture * fines;
    // The liquor that wets the cake is what is left when the caught fines are out of it.
    double wetting = liquor - finesCaught;
    double wettingSolids = wetting > 0 ? (fines - finesCaught + dissolved) / wetting : 0;
    double caught = fibreCapture * feed.fibreKgps() + finesCaught;
    double fineSand = 0;
    for (int i = 0; i < feed.sizes().size(); i++) {
      if (held(feed.sizes().get(i).meanM())) {
        caught += feed.sandKgps().get(i);
      } else {
        fineSand += feed.sandKgps().get(i);
      }
    }
    double share = wettingShare(caught, fineSand, wetting, wettingSolids, trace);
    // Liquid is what carries the rest on: where all of it stays in the cake, so does the fibre.
    double fibre = share >= 1 && caught > 0 ? 1 : fibreCapture;
    List<Double> sand = new ArrayList<>();
    for (GrainRange size : feed.sizes()) {
      sand.add(held(size.meanM()) ? 1.0 : share);
    }
    Partition partition =
        new Partition(
            sand, share, Numbers.rounded(finesCapture + (1 - finesCapture) * share), share, fibre);
    double dry =
        fibre * feed.fibreKgps()
            + partition.fines() * fines
            + partition.dissolved() * dissolved
            + feed.sandKgps(sand);
    double cake = dry + share * water;
    if (!(cake > 0)) {
      return new CakeResult(partition, cake, 0, cakeSolids);
    }
    trace.step(
        DRY,
        dry,
        fibre,
        feed.fibreKgps(),
        partition.fines(),
        fines,
        partition.dissolved(),
        dissolved,
        feed.sandKgps(sand));
    trace.step(CAKE, cake, dry, share, water);
    return new CakeResult(partition, cake, trace.step(SOLIDS, dry / cake, dry, cake), cakeSolids);
  }

  private boolean held(double sizeM) {
    return openingM.isPresent() && sizeM > openingM.getAsDouble();
  }

  /**
   * Share of the liquor that wets the cake. Fine sand comes with it and counts as dry matter, so
   * the balance s (D + x F + x L) = D + x F + x L c is linear in the share x.
   */
  private double wettingShare(
      double caught, double fineSand, double wetting, double solids, Trace trace) {
    double perShare = cakeSolids * (fineSand + wetting) - fineSand - wetting * solids;
    double wanted = caught * (1 - cakeSolids);
    if (!(wanted > 0)) {
      return 0;
    }
    // A feed thicker than the cake asked for goes into the cake as a whole.
    return perShare > wanted
        ? trace.step(WETTING, wanted / perShare, caught, cakeSolids, fineSand, wetting, solids)
        : trace.step(WHOLE, 1);
  }

  /**
   * What a separator does with its feed.
   *
   * @param partition shares of the feed that go to the cake
   * @param cakeKgps mass flow of the wet cake [kg/s]
   * @param solids dry matter over mass of the cake; 0 without cake
   * @param solidsAsked the dry matter that was asked for
   */
  public record CakeResult(
      Partition partition, double cakeKgps, double solids, double solidsAsked) {
    /**
     * Whether the cake is as dry as asked: it is not where the feed is thicker than that.
     *
     * @return true within rounding, or without cake
     */
    public boolean asAsked() {
      return cakeKgps == 0 || Math.abs(solids - solidsAsked) < 1e-9;
    }
  }
}
