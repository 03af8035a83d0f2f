package sandslurry.design.material;

import java.util.Optional;
import java.util.function.Function;

/** How much sand the carrier brings, in one of four ways. */
public sealed interface MixtureSpec {
  /**
   * What follows for each way to say it.
   *
   * @param byVolume by volume
   * @param byMass by mass
   * @param byRate by the rate at which sand is fed
   * @param ofStream by a stream of the plant
   * @param <R> what follows
   * @return what follows for this way
   */
  <R> R match(
      Function<ByVolume, R> byVolume,
      Function<ByMass, R> byMass,
      Function<ByRate, R> byRate,
      Function<OfStream, R> ofStream);

  /**
   * The stream of the plant that says it.
   *
   * @return empty where it is said otherwise
   */
  default Optional<OfStream> ofStream() {
    return match(v -> Optional.empty(), m -> Optional.empty(), r -> Optional.empty(), Optional::of);
  }

  /**
   * Whether sand is fed at a rate of its own: less flow then means a thicker mixture.
   *
   * @return true when it is said by the rate
   */
  default boolean isByRate() {
    return match(volume -> false, mass -> false, rate -> true, stream -> false);
  }

  /**
   * By volume.
   *
   * @param fraction volume of grains over volume of mixture
   */
  record ByVolume(double fraction) implements MixtureSpec {
    @Override
    public <R> R match(
        Function<ByVolume, R> byVolume,
        Function<ByMass, R> byMass,
        Function<ByRate, R> byRate,
        Function<OfStream, R> ofStream) {
      return byVolume.apply(this);
    }
  }

  /**
   * By mass.
   *
   * @param fraction mass of dry sand over mass of mixture
   */
  record ByMass(double fraction) implements MixtureSpec {
    @Override
    public <R> R match(
        Function<ByVolume, R> byVolume,
        Function<ByMass, R> byMass,
        Function<ByRate, R> byRate,
        Function<OfStream, R> ofStream) {
      return byMass.apply(this);
    }
  }

  /**
   * By the rate at which sand is fed, whatever the flow: less flow then means a thicker mixture.
   *
   * @param rateKgps mass of dry sand per time
   */
  record ByRate(double rateKgps) implements MixtureSpec {
    @Override
    public <R> R match(
        Function<ByVolume, R> byVolume,
        Function<ByMass, R> byMass,
        Function<ByRate, R> byRate,
        Function<OfStream, R> ofStream) {
      return byRate.apply(this);
    }
  }

  /**
   * By a stream of the plant: its liquor, its sand and the sizes of that sand, in every mode.
   *
   * @param stream name of the stream
   */
  record OfStream(String stream) implements MixtureSpec {
    @Override
    public <R> R match(
        Function<ByVolume, R> byVolume,
        Function<ByMass, R> byMass,
        Function<ByRate, R> byRate,
        Function<OfStream, R> ofStream) {
      return ofStream.apply(this);
    }
  }
}
