package sandslurry.separation.cyclone;

import sandslurry.correlation.Family;

/** The catalogue of hydrocyclone models and of rules for the cut size. */
public final class HydrocycloneModels {
  /** The model used unless another is asked for: it knows viscosity and every dimension. */
  public static final HydrocycloneModel DEFAULT = new FlintoffPlittTurak1987();

  /** Every correlation of the family. */
  public static final Family<HydrocycloneModel> FAMILY =
      Family.of(
          "cut size and pressure of a hydrocyclone",
          DEFAULT,
          new MedronhoSvarovsky1984(),
          new Plitt1976());

  /** Every rule that gives only a cut size. */
  public static final Family<CutSizeModel> RULES =
      Family.of("cut size of a hydrocyclone by rule", new Arterburn1982(), new Bradley1965());

  private HydrocycloneModels() {}
}
