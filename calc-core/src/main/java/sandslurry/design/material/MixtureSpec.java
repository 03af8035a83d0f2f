package sandslurry.design.material;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import si.uom.quantity.MassFlowRate;

/** How much sand the carrier brings, in one of four ways. */
public sealed interface MixtureSpec {
  /**
   * By volume.
   *
   * @param fraction volume of grains over volume of mixture
   */
  record ByVolume(Quantity<Dimensionless> fraction) implements MixtureSpec {}

  /**
   * By mass.
   *
   * @param fraction mass of dry sand over mass of mixture
   */
  record ByMass(Quantity<Dimensionless> fraction) implements MixtureSpec {}

  /**
   * By the rate at which sand is fed, whatever the flow: less flow then means a thicker mixture.
   *
   * @param rate mass of dry sand per time
   */
  record ByRate(Quantity<MassFlowRate> rate) implements MixtureSpec {}

  /**
   * By a stream of the plant: its liquor, its sand and the sizes of that sand, in every mode.
   *
   * @param stream name of the stream
   */
  record OfStream(String stream) implements MixtureSpec {}
}
