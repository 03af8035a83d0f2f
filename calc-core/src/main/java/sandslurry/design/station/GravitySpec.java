package sandslurry.design.station;

import java.util.OptionalDouble;
import sandslurry.separation.channel.GravityConduit;
import sandslurry.separation.channel.PartFullPipe;
import sandslurry.separation.channel.TrapezoidalChannel;

/**
 * A pipe that runs part full by gravity, or an open channel. Values are in SI.
 *
 * @param section its cross-section
 * @param slope fall over length; empty when the levels of its two units give it
 * @param lengthM its length; empty when it is not given [m]
 * @param manningN Manning's roughness n [s/m^(1/3)]
 * @param freeboardM how far it ends above the water that it flows into [m]
 */
public record GravitySpec(
    Section section,
    OptionalDouble slope,
    OptionalDouble lengthM,
    double manningN,
    double freeboardM) {
  /** A cross-section. */
  public sealed interface Section {
    /**
     * The size that may be chosen otherwise.
     *
     * @return bore or width of the floor [m]
     */
    double sizeM();

    /**
     * The same section in another size.
     *
     * @param otherM bore or width of the floor [m]
     * @return the section
     */
    Section of(double otherM);

    /**
     * The conduit of this section.
     *
     * @param slope fall over length
     * @param manningN Manning's roughness n [s/m^(1/3)]
     * @return pipe or channel
     */
    GravityConduit conduit(double slope, double manningN);
  }

  /**
   * A round pipe.
   *
   * @param boreM inside diameter [m]
   */
  public record Round(double boreM) implements Section {
    @Override
    public double sizeM() {
      return boreM;
    }

    @Override
    public Section of(double otherM) {
      return new Round(otherM);
    }

    @Override
    public GravityConduit conduit(double slope, double manningN) {
      return new PartFullPipe(boreM, slope, manningN);
    }
  }

  /**
   * An open channel, rectangular or trapezoidal.
   *
   * @param widthM width of its floor [m]
   * @param sideRun run over rise of its walls
   * @param wallM height of its walls [m]
   */
  public record Channel(double widthM, double sideRun, double wallM) implements Section {
    @Override
    public double sizeM() {
      return widthM;
    }

    @Override
    public Section of(double otherM) {
      return new Channel(otherM, sideRun, wallM);
    }

    @Override
    public GravityConduit conduit(double slope, double manningN) {
      return new TrapezoidalChannel(widthM, sideRun, wallM, slope, manningN);
    }
  }
}
