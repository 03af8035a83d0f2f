package sandslurry.plant.unit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.correlation.Estimate;
import sandslurry.numeric.Roots;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.PitFloor;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.pit.Impeller;
import sandslurry.separation.pit.PitMixing;
import sandslurry.separation.pit.Zwietering1958;

/**
 * The floor of a pit on which sand settles unless a mixer holds it up.
 *
 * <p>The pit is one mixed volume: what is in it falls out at the rate w A C, with w the hindered
 * settling velocity of a class, A the plan area and C its concentration. At rest that keeps
 *
 * <pre>η = y / (1 + y),   y = φ w A / Q</pre>
 *
 * <p>of a class, which is the one mixed basin of Hazen (1904); Q is what flows on. A mixer that
 * just suspends the class by Zwietering (1958) keeps nothing on the floor, φ = 0; below that speed
 * φ = 1 − (N/Njs)³, the share of the power that is lacking. That ramp is ours: nothing published is
 * used for what lies between rest and the just-suspended speed, and a step would leave the balance
 * without a solution. A mixer that runs for part of the day is taken to lift again what settled
 * meanwhile. Liquor goes with the sand as much as fills its pores.
 */
public final class SettlingFloor implements PitFloor {
  /** Shear rate at which the viscosity of a pit counts [1/s]. */
  public static final double SHEAR_PS = 10;

  private static final double AGREED = 1e-9;
  private static final int MOST_PASSES = 8;
  private static final Zwietering1958 ZWIETERING = new Zwietering1958();

  private final String stream;
  private final double areaM2;
  private final double porosity;
  private final LiquorModel liquor;
  private final Optional<Mixing> mixer;

  /**
   * A mixer and its speed.
   *
   * @param impeller the impeller
   * @param speedRps its speed, 0 when it stands [1/s]
   */
  public record Mixing(Impeller impeller, double speedRps) {}

  /**
   * Creates the floor.
   *
   * @param stream name of the stream of what settles
   * @param areaM2 plan area of the pit [m2]
   * @param porosity pores over bulk volume of settled sand, 0 to below 1
   * @param liquor how the liquor flows
   * @param mixer the mixer, if there is one
   */
  public SettlingFloor(
      String stream, double areaM2, double porosity, LiquorModel liquor, Optional<Mixing> mixer) {
    if (!(areaM2 > 0 && Double.isFinite(areaM2)) || !(porosity >= 0 && porosity < 1)) {
      throw new IllegalArgumentException(
          stream
              + ": needs an area > 0 and a porosity below 1 but has "
              + areaM2
              + ", "
              + porosity);
    }
    this.stream = stream;
    this.areaM2 = areaM2;
    this.porosity = porosity;
    this.liquor = liquor;
    this.mixer = mixer;
  }

  @Override
  public String stream() {
    return stream;
  }

  /**
   * Flow of clean liquor that sand falling out of the pit is equal to: φ w A of each class.
   *
   * @param mixture a stream or contents like those of the pit
   * @return one for each class [m3/s]; 0 in liquor thicker than any whose flow was measured
   */
  public double[] fallingM3ps(Stream mixture) {
    int classes = mixture.constituents().sandClasses().size();
    double[] falling = new double[classes];
    Optional<UnitFeed> feed = liquor.settling(mixture, 1, SHEAR_PS);
    if (feed.isEmpty() || !(feed.get().sandTotalKgps() > 0)) {
      return falling;
    }
    // A pit fills, is pumped and is stirred: no grain is trusted to the yield stress of its liquor.
    UnitFeed seen = feed.get().stirred();
    List<Estimate> falls = seen.hinderedVelocitiesMps();
    double first = seen.sizes().get(0).meanM();
    OptionalDouble just = justSuspendsRps(seen, first);
    for (int k = 0; k < classes; k++) {
      double size = seen.sizes().get(k).meanM();
      double down =
          just.isPresent()
              ? PitMixing.heldDown(
                  mixer.get().speedRps(), just.getAsDouble() * Zwietering1958.faster(first, size))
              : 1;
      falling[k] = down > 0 ? down * areaM2 * falls.get(k).value() : 0;
    }
    return falling;
  }

  /** The speed of the mixer that just suspends grains of a size; empty without a mixer. */
  private OptionalDouble justSuspendsRps(UnitFeed feed, double sizeM) {
    double load = feed.sandTotalKgps() / feed.liquidKgps();
    return mixer.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            ZWIETERING
                .speedRps(
                    mixer.get().impeller(), sizeM, feed.liquid(), feed.sandDensityKgM3(), load)
                .value());
  }

  /**
   * What falls out of the pit does so from what it holds, which is what passes less what fell. How
   * fast it falls, and how fast a mixer must turn, depend on how much sand is held up in all: that
   * is substituted until it agrees, or, where it swings, found as a root.
   */
  @Override
  public double[] kept(Stream through, Stream arriving) {
    double sand = through.sandKgps();
    if (!(sand > 0)) {
      return new double[through.constituents().count()];
    }
    double up = sand;
    for (int pass = 0; pass < MOST_PASSES; pass++) {
      double[] kept = kept(through, up);
      double next = up(through, kept);
      if (Math.abs(next - up) <= AGREED * sand) {
        return kept;
      }
      up = next;
    }
    return kept(
        through, Roots.between("sand held up", m -> up(through, kept(through, m)) - m, 0, sand));
  }

  /** What is kept where so much sand is held up [kg/s]. */
  private double[] kept(Stream through, double up) {
    double[] flows = through.toArray();
    double[] settled = new double[flows.length];
    Arrays.fill(settled, Constituents.SAND, flows.length, 1 - up / through.sandKgps());
    pores(settled, through);
    for (int i = 0; i < flows.length; i++) {
      flows[i] *= 1 - settled[i];
    }
    Stream held = Stream.of(through.constituents(), flows);
    double[] falling = fallingM3ps(held);
    double[] kept = new double[flows.length];
    double volumeM3ps = held.volumeM3ps();
    for (int k = 0; k < falling.length; k++) {
      kept[Constituents.SAND + k] = falling[k] > 0 ? falling[k] / (volumeM3ps + falling[k]) : 0;
    }
    pores(kept, through);
    return kept;
  }

  private static double up(Stream through, double[] kept) {
    double up = 0;
    for (int i = Constituents.SAND; i < kept.length; i++) {
      up += through.kgps(i) * (1 - kept[i]);
    }
    return up;
  }

  /** Adds the liquor in the pores of the sand that settles, of which there may be too little. */
  private void pores(double[] kept, Stream mixture) {
    Constituents of = mixture.constituents();
    double grains = 0;
    double liquorM3ps = 0;
    for (int i = 0; i < kept.length; i++) {
      double volume = mixture.kgps(i) / of.densityKgM3(i);
      if (i >= Constituents.SAND) {
        grains += kept[i] * volume;
      } else if (i != Constituents.FIBRE) {
        liquorM3ps += volume;
      }
    }
    double pores = grains * porosity / (1 - porosity);
    double share = liquorM3ps > 0 ? Math.min(1, pores / liquorM3ps) : 0;
    for (int i = 0; i < Constituents.SAND; i++) {
      kept[i] = i == Constituents.FIBRE ? 0 : share;
    }
  }
}
