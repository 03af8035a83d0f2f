package sandslurry.material.liquid;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.correlation.Bound;
import sandslurry.material.liquid.Carrier.Scatter;
import sandslurry.material.liquid.Carrier.Source;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The carriers that the program can make from what a user knows. */
public final class Carriers {
  /** Total solids of the manures that were measured. */
  static final Bound MEASURED_TOTAL_SOLIDS =
      new Bound("sand-free total solids", Kind.PERCENT, 0.025, 0.121);

  /** The most total solids for which a power law is still given. */
  public static final double HIGHEST_TOTAL_SOLIDS = 0.13;

  /** What to do with a manure of more solids than those of the table. */
  public static final String MEASURE_INSTEAD =
      "the table of measured manures ends there. Have the manure measured with a vane or a wide"
          + " rotating viscometer, at its temperature in the line, from 0.1 to 100 1/s, and give"
          + " the carrier as readings, or as a rheology with its yield stress";

  /** Temperature at which the manures were measured [K]. */
  public static final double MEASURED_K = 308.15;

  private static final double MEASURED_WATER_PAS = Water.viscosityPaS(MEASURED_K);

  /** Factor in K between farms, either way, at equal total solids; from memory, unverified. */
  public static final double FARM_SCATTER = 3;

  /**
   * Factor either way in every stress of a liquid whose numbers are typed in (common practice, no
   * source): one sample, one viscometer, and who typed it knows no better.
   */
  static final double TYPED_SCATTER = 1.1;

  /** Yield stress of manure of {@link #YIELD_SOLIDS}, in the middle of the farms [Pa]. */
  private static final double YIELD_PA = 10;

  /** Solids of that manure. */
  private static final double YIELD_SOLIDS = 0.12;

  /** How steeply it rises with the solids. */
  private static final double YIELD_POWER = 5.5;

  /** Density of dry manure solids [kg/m3]; from memory, unverified. */
  public static final double MANURE_SOLIDS_KG_M3 = 1450;

  /**
   * The power law of dairy manure: Achkari-Begdouri and Goodrich (1992), Bioresource Technology 40,
   * as tabulated by Wu and Chen (2008), Biotechnology and Bioengineering 99:700. No copy of the
   * table could be read: its numbers are from memory, unverified, but K, n and the shear ranges
   * reproduce the columns of least and greatest viscosity of the same table, which a slip in any of
   * them would upset.
   */
  private static final List<Row> TABLE =
      List.of(
          new Row(0.025, 0.042, 0.710, 226, 702),
          new Row(0.054, 0.192, 0.562, 50, 702),
          new Row(0.075, 0.525, 0.533, 11, 399),
          new Row(0.091, 1.052, 0.467, 11, 156),
          new Row(0.121, 5.885, 0.367, 3, 149));

  private static final String MEASURED_AT = inBothSystems(Kind.TEMPERATURE, MEASURED_K);

  private static final String DENSITY_NOTE =
      "Density is that of water with dry manure solids of "
          + inBothSystems(Kind.DENSITY, MANURE_SOLIDS_KG_M3)
          + " (from memory, unverified); manure that holds gas is lighter.";

  private Carriers() {}

  /**
   * A row of the table: manure of one total solids content at 35 degC.
   *
   * @param totalSolids dry matter over total mass
   * @param consistency K [Pa.s^n]
   * @param index n
   * @param lowestShearRatePs least shear rate measured [1/s]
   * @param highestShearRatePs greatest shear rate measured [1/s]
   */
  private record Row(
      double totalSolids,
      double consistency,
      double index,
      double lowestShearRatePs,
      double highestShearRatePs) {}

  /**
   * Clean water.
   *
   * @param temperatureK temperature [K]
   * @return water at atmospheric pressure
   * @throws IllegalArgumentException if water is not liquid at this temperature
   */
  public static Carrier water(double temperatureK) {
    Liquid water = Water.at(temperatureK);
    return new Carrier(
        "water",
        temperatureK,
        water.densityKgM3(),
        new Newtonian(water.viscosityPaS()),
        Water.vapourPressurePa(temperatureK),
        OptionalDouble.of(0),
        Optional.empty(),
        Scatter.none(new Newtonian(water.viscosityPaS())),
        List.of(),
        List.of());
  }

  /**
   * Dairy manure liquor by its sand-free total solids.
   *
   * <p>Between the rows of the table ln K and n are linear in total solids. Below the first row
   * they run to water (n = 1, K = μ), where there is no measurement; above the last row they go on
   * with the slope of the last interval as far as {@link #HIGHEST_TOTAL_SOLIDS}. K at another
   * temperature is K at 35 degC times μ(T)/μ(35 degC) of water; n is kept. Density is that of water
   * and dry solids of 1450 kg/m³ side by side.
   *
   * @param totalSolids dry matter without sand over mass without sand
   * @param temperatureK temperature [K]
   * @return the liquor, with notes on what is uncertain
   * @throws IllegalArgumentException if total solids lie outside 0 to 13 % or water is not liquid
   */
  public static Carrier manure(double totalSolids, double temperatureK) {
    Rheology rheology = manureRheology(totalSolids, temperatureK);
    Liquid water = Water.at(temperatureK);
    List<String> notes = new ArrayList<>();
    Optional<Bound> shearRates = Optional.empty();
    if (totalSolids > 0) {
      Row high = upperRow(totalSolids);
      shearRates = Optional.of(measuredShearRates(lowerRow(high), high));
      double thinning = water.viscosityPaS() / MEASURED_WATER_PAS;
      notes.addAll(rheologyNotes(totalSolids, temperatureK, thinning));
    }
    notes.add(DENSITY_NOTE);
    notes.add(
        "The vapour pressure is that of water. Manure gives off dissolved gas before it boils, so"
            + " leave more suction head than the vapour pressure alone requires.");
    double density =
        1 / ((1 - totalSolids) / water.densityKgM3() + totalSolids / MANURE_SOLIDS_KG_M3);
    List<Bound.Excess> excesses =
        MEASURED_TOTAL_SOLIDS.check(totalSolids).map(List::of).orElse(List.of());
    return new Carrier(
        "manure liquor, " + percent(totalSolids) + " total solids without sand",
        temperatureK,
        density,
        rheology,
        Water.vapourPressurePa(temperatureK),
        OptionalDouble.of(totalSolids),
        shearRates,
        totalSolids > 0
            ? Scatter.of(
                Source.SOLIDS, rheology, FARM_SCATTER, FARM_SCATTER * yieldStressPa(totalSolids))
            : Scatter.none(rheology),
        notes,
        excesses);
  }

  /**
   * The flow curve of dairy manure liquor, as of {@link #manure} without its notes: for balances
   * that ask for it thousands of times.
   *
   * @param totalSolids dry matter without sand over mass without sand
   * @param temperatureK temperature [K]
   * @return the power law, or water without solids
   * @throws IllegalArgumentException if total solids lie outside 0 to 13 % or water is not liquid
   */
  public static Rheology manureRheology(double totalSolids, double temperatureK) {
    return manureRheologyIn(Water.viscosityPaS(temperatureK), totalSolids);
  }

  /**
   * The same where the viscosity of water at the temperature is known.
   *
   * @param waterViscosityPaS viscosity of water [Pa.s]
   * @param totalSolids sand-free total solids by mass, 0 to {@link #HIGHEST_TOTAL_SOLIDS}
   * @return the rheology
   */
  public static Rheology manureRheologyIn(double waterViscosityPaS, double totalSolids) {
    if (!(totalSolids >= 0 && totalSolids <= HIGHEST_TOTAL_SOLIDS)) {
      throw new IllegalArgumentException(
          "sand-free total solids must lie in 0 % to "
              + percent(HIGHEST_TOTAL_SOLIDS)
              + " but were "
              + (Double.isFinite(totalSolids) ? percent(totalSolids) : "" + totalSolids)
              + ": "
              + MEASURE_INSTEAD);
    }
    if (!(totalSolids > 0)) {
      return new Newtonian(waterViscosityPaS);
    }
    double thinning = waterViscosityPaS / MEASURED_WATER_PAS;
    Row high = upperRow(totalSolids);
    Row low = lowerRow(high);
    double t = (totalSolids - low.totalSolids()) / (high.totalSolids() - low.totalSolids());
    double logConsistency =
        (1 - t) * Math.log(low.consistency()) + t * Math.log(high.consistency());
    double index = (1 - t) * low.index() + t * high.index();
    return new PowerLaw(thinning * Math.exp(logConsistency), index);
  }

  /**
   * Yield stress of manure of these solids, which the table, a power law, does not give: about none
   * below 4 %, of the order of 1 Pa at 6 to 8 %, 5 to 30 Pa at 10 to 13 % (from memory,
   * unverified), as one power of the solids. Farms differ by {@link #FARM_SCATTER} either way.
   *
   * @param totalSolids dry matter without sand over mass without sand, not negative
   * @return 10 Pa (solids / 12 %)^5.5 [Pa]
   */
  public static double yieldStressPa(double totalSolids) {
    return YIELD_PA * Math.pow(totalSolids / YIELD_SOLIDS, YIELD_POWER);
  }

  /** The first row with as much total solids or more; above the table its last. */
  private static Row upperRow(double totalSolids) {
    int i = 0;
    while (i < TABLE.size() - 1 && totalSolids > TABLE.get(i).totalSolids()) {
      i++;
    }
    return TABLE.get(i);
  }

  /** The row before another; before the first stands water. */
  private static Row lowerRow(Row high) {
    int i = TABLE.indexOf(high);
    return i > 0 ? TABLE.get(i - 1) : new Row(0, MEASURED_WATER_PAS, 1, 0, 0);
  }

  /**
   * Viscosity of manure at 50 1/s over that at 35 degC, by the regression of Achkari-Begdouri and
   * Goodrich (1992), Rheological properties of Moroccan dairy cattle manure: K as exp(4830/T), n
   * rising by 4.6831e-3 a kelvin; read as coded in an open library of the Hamburg University of
   * Technology (TransiEnt 1.3.0). Over what temperatures it was measured was not read, so it is
   * shown beside the ratio used and not used itself.
   *
   * @param temperatureK temperature [K]
   * @return ratio, the same for all total solids
   */
  public static double coldRatio(double temperatureK) {
    return Math.exp(4830 * (1 / temperatureK - 1 / MEASURED_K))
        * Math.pow(50, 4.6831e-3 * (temperatureK - MEASURED_K));
  }

  /** The shear rates at which the rows on both sides were measured; water holds for all. */
  private static Bound measuredShearRates(Row low, Row high) {
    boolean besideWater = !(low.highestShearRatePs() > 0);
    return new Bound(
        "shear rate of the manure",
        Kind.SHEAR_RATE,
        besideWater
            ? high.lowestShearRatePs()
            : Math.min(low.lowestShearRatePs(), high.lowestShearRatePs()),
        Math.max(low.highestShearRatePs(), high.highestShearRatePs()));
  }

  private static List<String> rheologyNotes(
      double totalSolids, double temperatureK, double thinning) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Viscosity by total solids differs between farms by a factor of about three either way"
            + " (from memory, unverified): feed, fibre and screening count as much as total solids."
            + " A measured flow curve is better than this table.");
    if (!(totalSolids >= MEASURED_TOTAL_SOLIDS.low())) {
      notes.add(
          "Viscosity is interpolated between water and the thinnest manure that was measured.");
    } else if (!(totalSolids <= MEASURED_TOTAL_SOLIDS.high())) {
      notes.add("Viscosity is extrapolated from the two thickest manures that were measured.");
    }
    if (Math.abs(temperatureK - MEASURED_K) > 0.5) {
      notes.add(
          String.format(
              Locale.ROOT,
              "Measured at %s; K is multiplied by %.2f, the ratio of water's viscosities. The"
                  + " temperature law of the same authors gives %.2f at 50 1/s, if it holds as far"
                  + " as this line's temperature. What is"
                  + " remembered of manure (1.5 to 3 per cent a kelvin; 1.5 to 2.5 times at 10 to"
                  + " 15 degC; from memory, unverified) leaves room for K from a quarter less to 60"
                  + " per cent more when it is cold.",
              MEASURED_AT,
              thinning,
              coldRatio(temperatureK)));
    }
    return notes;
  }

  /**
   * A Newtonian carrier whose density and viscosity were measured.
   *
   * @param description what it is, in words
   * @param temperatureK temperature [K]
   * @param densityKgM3 density [kg/m3]
   * @param viscosityPaS dynamic viscosity [Pa.s]
   * @return the carrier, with the vapour pressure of water
   */
  public static Carrier measured(
      String description, double temperatureK, double densityKgM3, double viscosityPaS) {
    return measured(description, temperatureK, densityKgM3, new Newtonian(viscosityPaS));
  }

  /**
   * A carrier whose density and flow curve were measured.
   *
   * @param description what it is, in words
   * @param temperatureK temperature [K]
   * @param densityKgM3 density [kg/m3]
   * @param rheology the law fitted to the measurement
   * @return the carrier, with the vapour pressure of water
   */
  static Carrier measured(
      String description, double temperatureK, double densityKgM3, Rheology rheology) {
    return measured(
        description,
        temperatureK,
        densityKgM3,
        rheology,
        OptionalDouble.empty(),
        Optional.empty(),
        List.of());
  }

  /**
   * A carrier whose density and flow curve were typed in, with what is known of the measurement.
   *
   * @param description what it is, in words
   * @param temperatureK temperature [K]
   * @param densityKgM3 density [kg/m3]
   * @param rheology the law
   * @param totalSolids dry matter without sand over mass without sand, if known
   * @param shearRates shear rates between which it was measured, if known
   * @param notes what a reader of a result must know of it
   * @return the carrier, with the vapour pressure of water
   */
  public static Carrier measured(
      String description,
      double temperatureK,
      double densityKgM3,
      Rheology rheology,
      OptionalDouble totalSolids,
      Optional<Bound> shearRates,
      List<String> notes) {
    return measured(
        description,
        temperatureK,
        densityKgM3,
        rheology,
        totalSolids,
        shearRates,
        Scatter.of(Source.TYPED, rheology, TYPED_SCATTER, 0),
        notes);
  }

  /**
   * A carrier whose density and flow curve were measured, with what is known of the measurement.
   *
   * @param description what it is, in words
   * @param temperatureK temperature [K]
   * @param densityKgM3 density [kg/m3]
   * @param rheology the law fitted to the measurement
   * @param totalSolids dry matter without sand over mass without sand, if known
   * @param shearRates shear rates between which it was measured, if known
   * @param scatter how far it may be off
   * @param notes what a reader of a result must know of the fit
   * @return the carrier, with the vapour pressure of water
   */
  public static Carrier measured(
      String description,
      double temperatureK,
      double densityKgM3,
      Rheology rheology,
      OptionalDouble totalSolids,
      Optional<Bound> shearRates,
      Scatter scatter,
      List<String> notes) {
    List<String> all = new ArrayList<>(notes);
    all.add("Density and rheology are as entered; the vapour pressure is that of water.");
    return new Carrier(
        description,
        temperatureK,
        densityKgM3,
        rheology,
        Water.vapourPressurePa(temperatureK),
        totalSolids,
        shearRates,
        scatter,
        all,
        List.of());
  }

  private static String percent(double fraction) {
    return UnitSystem.METRIC.show(Kind.PERCENT, fraction);
  }

  private static String inBothSystems(Kind<?> kind, double si) {
    return UnitSystem.METRIC.show(kind, si) + " (" + UnitSystem.US.show(kind, si) + ")";
  }
}
