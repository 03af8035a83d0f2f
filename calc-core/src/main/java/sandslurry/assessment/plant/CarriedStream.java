package sandslurry.assessment.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.design.Design;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.CarrierSpec.ManureSpec;
import sandslurry.design.material.Sand;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.SievePoint;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;

/**
 * The stream of the plant that a line carries, as it is at one time of the day.
 *
 * @param name what the stream is called
 * @param when the time, in words that follow "as it is"
 * @param lastsS how long it lasts in a day; 0 for a moment [s]
 * @param stream what flows; empty when nobody knows
 */
public record CarriedStream(String name, String when, double lastsS, Optional<Stream> stream) {
  /** What passes the finest boundary lies between it and half of it, as in any sieve analysis. */
  private static final double FINEST_M = Gradation.FINES_BOUNDARY_M / 2;

  /**
   * Mean flow rate while it lasts.
   *
   * @return flow rate [m3/s]; 0 when the plant comes to no balance
   */
  public double flowM3ps() {
    return stream.map(Stream::volumeM3ps).orElse(0.0);
  }

  /**
   * Whether the flow curve of the liquor is known.
   *
   * @return false above the solids of the measurements
   */
  public boolean known() {
    return stream.map(s -> solids(s) <= Carriers.HIGHEST_TOTAL_SOLIDS).orElse(false);
  }

  /**
   * Solids of the liquor. Mineral fines come with the sand and thicken the liquor besides; without
   * sand there is nothing that they could come with, and they count as solids.
   *
   * @param stream a stream of the plant
   * @return mass of solids over mass of liquor
   */
  public static double solids(Stream stream) {
    return stream.sandKgps() > 0 ? stream.manureTotalSolids() : stream.totalSolids();
  }

  /**
   * The design whose line carries this.
   *
   * @param design the design that names the stream
   * @return the same with the liquor, sand and sizes of the stream; empty when nothing flows or the
   *     liquor is not {@link #known}
   */
  public Optional<Design> in(Design design) {
    if (!(flowM3ps() > 0) || !known()) {
      return Optional.empty();
    }
    Stream flows = stream.orElseThrow();
    double mineral = mineralKgps(flows);
    return Optional.of(
        design.carrying(
            flows.sandKgps() > 0
                ? new Sand(
                    "sand of the stream \"" + name + "\", " + when,
                    gradation(flows, mineral),
                    design.sand().densityKgM3(),
                    design.sand().shape())
                : design.sand(),
            carrier(design, flows),
            mineralShare()));
  }

  /**
   * Volume of all mineral grains, fines among them, over volume of the stream.
   *
   * @return the share; 0 without sand
   */
  public double mineralShare() {
    return stream
        .filter(flows -> flows.sandKgps() > 0)
        .map(
            flows ->
                mineralKgps(flows) / flows.constituents().sandDensityKgM3() / flows.volumeM3ps())
        .orElse(0.0);
  }

  private static double mineralKgps(Stream flows) {
    return flows.sandKgps() + flows.kgps(Constituents.MINERAL_FINES);
  }

  private static CarrierSpec carrier(Design design, Stream flows) {
    double solids = solids(flows);
    return solids > 0 ? new ManureSpec(design.carrier().temperatureK(), solids) : design.carrier();
  }

  /** All mineral grains of the stream, its mineral fines among them. */
  private static Gradation gradation(Stream flows, double mineralKgps) {
    List<SievePoint> points = new ArrayList<>();
    double passing = flows.kgps(Constituents.MINERAL_FINES) / mineralKgps;
    points.add(new SievePoint(FINEST_M, 0));
    double last = Gradation.FINES_BOUNDARY_M;
    points.add(new SievePoint(last, passing));
    for (SizeClass size : flows.sandClasses()) {
      if (size.lowM() > last * (1 + 1e-9)) {
        points.add(new SievePoint(size.lowM(), passing));
      }
      passing = Math.min(1, passing + size.massFraction() * flows.sandKgps() / mineralKgps);
      last = size.highM();
      points.add(new SievePoint(last, passing));
    }
    points.set(points.size() - 1, new SievePoint(last, 1));
    return Gradation.of(points);
  }
}
