package sandslurry.material.liquid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import sandslurry.correlation.Bound;
import sandslurry.numeric.LeastSquares;
import sandslurry.numeric.UnsolvedException;
import sandslurry.units.Kind;

/**
 * The four rheology models fitted by least squares to readings of a viscometer, and which of them
 * the readings speak for.
 *
 * <p>Each model is fitted to the shear stress by the method of Levenberg and Marquardt in the
 * logarithms of its parameters, so no parameter can become negative and none is clamped. A yield
 * stress that the readings do not ask for (the best fit has none, or a negative one) is not set to
 * zero: the model is listed as not supported, with the reason, and the model without yield stress
 * stands for it.
 *
 * <p>With six readings or more the models are ranked by the information criterion of Akaike with
 * the small-sample term of Hurvich and Tsai (1989), Biometrika 76:297-307:
 *
 * <pre>AICc = N ln(S/N) + 2k + 2k(k+1)/(N − k − 1)</pre>
 *
 * <p>N readings; S weighted sum of the squares of the residuals; k number of parameters plus one,
 * for the variance. Two models less than 2 apart fit about equally well (a usual rule, Burnham and
 * Anderson 2002, from memory, unverified), and a warning says so and what it means. With fewer
 * readings the criterion is not defined for all models; then the residual standard deviation ranks
 * them, and a warning says that the readings are too few to choose.
 *
 * <p>Standard errors and covariance are those of the linearised fit: residual variance with N − p
 * degrees of freedom. They tell the scatter of the readings about the curve, not the scatter
 * between samples, days or farms, which is larger.
 */
public final class RheogramFit {
  private static final int LEAST_READINGS = 3;
  private static final int ENOUGH_TO_RANK = 6;
  private static final double EQUAL_CRITERIA = 2;
  private static final double EQUAL_DEVIATIONS = 2;
  private static final double ROUNDING = 1e-12;
  private static final double NO_YIELD_STRESS = 1e-6;

  /** So many standard errors either way are taken for the scatter. */
  private static final double ERRORS = 2;

  /** A fit with an error in its yield stress has a scatter, however small. */
  private static final double LEAST_SCATTER = 1.001;

  /** No fit is taken to be off by a greater factor than manures of equal solids are. */
  private static final double MOST_SCATTER = Carriers.FARM_SCATTER;

  /** A law of less index is a yield stress in disguise; its powers overflow elsewhere. */
  private static final double LEAST_INDEX = 0.05;

  /** No liquor thickens more with shear, and from 2 on no end of laminar flow is known. */
  private static final double GREATEST_INDEX = 1.5;

  private static final String HARDLY_RISES = "the shear stress hardly rises with the shear rate";

  /** Flow index of a liquor of which one shear rate is known: that of thick manure. */
  private static final double ASSUMED_INDEX = 0.4;

  /** Yield stress over the stress at that rate, for the law with one. */
  private static final double ASSUMED_YIELD_SHARE = 0.5;

  /** What the readings are believed to be equally good in. */
  public enum Weighting {
    /** Every reading has the same error in pascals: a viscometer on one torque range. */
    SAME_PASCALS,
    /** Every reading has the same error in per cent: several ranges, stresses over decades. */
    SAME_PER_CENT
  }

  /**
   * A fitted parameter.
   *
   * @param symbol the symbol: "K"
   * @param unit the unit: "Pa.s^n"; empty for a pure number
   * @param value the value, in that unit
   * @param standardError its standard error, in that unit
   */
  public record Parameter(String symbol, String unit, double value, double standardError) {}

  /**
   * One model and how it fits.
   *
   * @param model the name of the model
   * @param rheology the fitted model, or nothing when the readings do not support it
   * @param parameters the parameters with their standard errors
   * @param covariance covariance of the parameters, in the same order, in the products of their
   *     units
   * @param residualsPa measured minus fitted stress, in the order of the readings [Pa]
   * @param rmsePa root of the mean square of the residuals [Pa]
   * @param criterion what the models are ranked by, less is better: AICc with six readings or more,
   *     else the weighted residual standard deviation
   * @param remark why the model is not supported; empty when it is
   */
  public record Candidate(
      String model,
      Optional<Rheology> rheology,
      List<Parameter> parameters,
      List<List<Double>> covariance,
      List<Double> residualsPa,
      double rmsePa,
      double criterion,
      String remark) {
    /** Copies the lists. */
    public Candidate {
      parameters = List.copyOf(parameters);
      covariance = covariance.stream().map(List::copyOf).toList();
      residualsPa = List.copyOf(residualsPa);
    }

    private boolean isTooSteep() {
      return rheology.isPresent() && rheology.get().index() > GREATEST_INDEX;
    }
  }

  private final List<ViscometerReading> readings;
  private final Weighting weighting;
  private final List<Candidate> candidates;
  private final List<Candidate> equallyGood;
  private final List<String> warnings;

  private RheogramFit(
      List<ViscometerReading> readings,
      Weighting weighting,
      List<Candidate> candidates,
      List<Candidate> equallyGood,
      List<String> warnings) {
    this.readings = List.copyOf(readings);
    this.weighting = weighting;
    this.candidates = List.copyOf(candidates);
    this.equallyGood = List.copyOf(equallyGood);
    this.warnings = List.copyOf(warnings);
  }

  /**
   * Everything that is wrong with a table of readings.
   *
   * @param readings the readings
   * @return one sentence without a stop for each problem; empty when the table can be fitted
   */
  public static List<String> problems(List<ViscometerReading> readings) {
    List<String> problems = new ArrayList<>();
    if (readings.size() < LEAST_READINGS) {
      problems.add("a fit needs at least 3 readings but has " + readings.size());
    }
    Set<ViscometerReading> seen = new HashSet<>();
    for (int i = 0; i < readings.size(); i++) {
      ViscometerReading reading = readings.get(i);
      String where = "reading " + (i + 1) + ": ";
      if (!(reading.shearRatePs() > 0 && Double.isFinite(reading.shearRatePs()))) {
        problems.add(where + "the shear rate must be > 0 but is " + reading.shearRatePs() + " 1/s");
      }
      if (!(reading.shearStressPa() > 0 && Double.isFinite(reading.shearStressPa()))) {
        problems.add(
            where + "the shear stress must be > 0 but is " + reading.shearStressPa() + " Pa");
      }
      if (!seen.add(reading)) {
        problems.add(
            where
                + "the same shear rate and stress stand in the table twice, "
                + reading.shearRatePs()
                + " 1/s and "
                + reading.shearStressPa()
                + " Pa");
      }
    }
    return List.copyOf(problems);
  }

  /**
   * Fits the models.
   *
   * @param readings the readings, in any order
   * @param weighting what they are believed to be equally good in
   * @return the fit
   * @throws IllegalArgumentException if there are {@link #problems}; the message tells all of them
   */
  public static RheogramFit of(List<ViscometerReading> readings, Weighting weighting) {
    List<String> problems = problems(readings);
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
    Table table = new Table(readings, weighting);
    List<Candidate> candidates = new ArrayList<>();
    candidates.add(newtonian(table));
    if (table.rates() > 1) {
      candidates.add(powerLaw(table));
      candidates.add(bingham(table));
      candidates.add(herschelBulkley(table));
    } else {
      candidates.add(assumed("power law", table, 0, List.of("K", "n"), List.of("Pa.s^n", "")));
      candidates.add(
          assumed(
              "Herschel-Bulkley",
              table,
              ASSUMED_YIELD_SHARE,
              List.of("tau_y", "K", "n"),
              List.of("Pa", "Pa.s^n", "")));
    }
    candidates.sort(
        Comparator.comparing(Candidate::isTooSteep)
            .thenComparingDouble(Candidate::criterion)
            .thenComparingInt(candidate -> candidate.parameters().size()));
    List<Candidate> equallyGood =
        candidates.stream()
            .filter(other -> other.rheology().isPresent() && !other.isTooSteep())
            .filter(other -> other == candidates.get(0) || table.equal(candidates.get(0), other))
            .toList();
    List<String> warnings = warnings(table, equallyGood);
    if (candidates.stream().anyMatch(Candidate::isTooSteep)) {
      warnings.add(
          "By a curve that fits the shear stress rises faster than with the 1.5th power of the"
              + " shear rate: no liquor does that, and the curve is not taken. Look for sand, slip"
              + " or turbulence in the viscometer, and for a slip in the readings.");
    }
    return new RheogramFit(readings, weighting, candidates, equallyGood, warnings);
  }

  /**
   * Every model.
   *
   * @return the models, the best first, those that the readings do not support last
   */
  public List<Candidate> candidates() {
    return candidates;
  }

  /**
   * The model that the readings speak for most.
   *
   * @return a model with its parameters; read {@link #warnings} before relying on it
   */
  public Candidate best() {
    return candidates.get(0);
  }

  /**
   * The models between which the readings do not choose.
   *
   * @return the best, and those that fit about as well
   */
  public List<Candidate> equallyGood() {
    return equallyGood;
  }

  /**
   * What a reader of the fit must know.
   *
   * @return sentences; empty when the readings decide clearly
   */
  public List<String> warnings() {
    return warnings;
  }

  /**
   * The readings fitted.
   *
   * @return the readings in the order given
   */
  public List<ViscometerReading> readings() {
    return readings;
  }

  /**
   * The shear rates between which the fit was measured.
   *
   * @return the limits, against which the shear rate at a pipe wall or at a grain can be checked
   */
  public Bound shearRates() {
    return new Bound(
        "shear rate",
        Kind.SHEAR_RATE,
        readings.stream().mapToDouble(ViscometerReading::shearRatePs).min().orElseThrow(),
        readings.stream().mapToDouble(ViscometerReading::shearRatePs).max().orElseThrow());
  }

  /**
   * How far a fitted law may be off: two standard errors of its stress at the shear rate where they
   * are greatest beside the stress. The thinner end of a law with a yield stress has two standard
   * errors of it less; the thicker end of a law without one has two standard errors of the yield
   * stress that a straight line in the power of its shear rate would show, for a yield stress that
   * the fit has thrown away may be there all the same.
   *
   * @param candidate a law that the readings support
   * @return the scatter
   */
  public Carrier.Scatter scatter(Candidate candidate) {
    Rheology law = candidate.rheology().orElseThrow();
    double relative = 0;
    for (ViscometerReading reading : readings) {
      relative = Math.max(relative, relativeError(candidate, law, reading.shearRatePs()));
    }
    double factor = Math.min(MOST_SCATTER, 1 + ERRORS * relative);
    double error = yieldError(candidate, law);
    double least = Math.max(0, law.yieldStressPa() - ERRORS * error) / factor;
    double most = (law.yieldStressPa() + ERRORS * error) * factor;
    // A law through readings without error has no scatter, whatever rounding leaves.
    if (error < NO_YIELD_STRESS * law.shearStressPa(shearRates().high())) {
      return Carrier.Scatter.of(Carrier.Source.FITTED, law, factor, 0);
    }
    return new Carrier.Scatter(
        Carrier.Source.FITTED,
        Math.max(factor, LEAST_SCATTER),
        new HerschelBulkley(least, law.consistency() / factor, law.index()),
        new HerschelBulkley(most, law.consistency() * factor, law.index()));
  }

  private static double relativeError(Candidate candidate, Rheology law, double shearRatePs) {
    double power = Math.pow(shearRatePs, law.index());
    double variance = 0;
    for (int i = 0; i < candidate.parameters().size(); i++) {
      for (int j = 0; j < candidate.parameters().size(); j++) {
        variance +=
            slope(candidate.parameters().get(i).symbol(), law, shearRatePs, power)
                * slope(candidate.parameters().get(j).symbol(), law, shearRatePs, power)
                * candidate.covariance().get(i).get(j);
      }
    }
    return Math.sqrt(Math.max(0, variance)) / law.shearStressPa(shearRatePs);
  }

  /** How the stress changes with a parameter. */
  private static double slope(String symbol, Rheology law, double shearRatePs, double power) {
    return switch (symbol) {
      case "tau_y" -> 1;
      case "n" -> law.consistency() * power * Math.log(shearRatePs);
      default -> power;
    };
  }

  /** Standard error of the yield stress, or of the one that a law without it might have had. */
  private double yieldError(Candidate candidate, Rheology law) {
    for (Parameter parameter : candidate.parameters()) {
      if (parameter.symbol().equals("tau_y")) {
        return parameter.standardError();
      }
    }
    Table table = new Table(readings, weighting);
    return table.rates() > 1 && table.size() > 2 ? table.interceptError(law.index()) : 0;
  }

  private static Candidate newtonian(Table table) {
    double viscosity = table.sum((x, y) -> x * y) / table.sum((x, y) -> x * x);
    return candidate(
        "Newtonian",
        table,
        List.of("mu"),
        List.of("Pa.s"),
        new Power(false, true),
        new double[] {viscosity},
        p -> new Newtonian(p.get(0)));
  }

  private static Candidate powerLaw(Table table) {
    double weight = table.sum((x, y) -> y * y);
    double meanX = table.sum((x, y) -> y * y * Math.log(x)) / weight;
    double meanY = table.sum((x, y) -> y * y * Math.log(y)) / weight;
    double index =
        table.sum((x, y) -> y * y * (Math.log(x) - meanX) * (Math.log(y) - meanY))
            / table.sum((x, y) -> y * y * Math.pow(Math.log(x) - meanX, 2));
    if (!(index >= LEAST_INDEX)) {
      return unsupported("power law", HARDLY_RISES);
    }
    return candidate(
        "power law",
        table,
        List.of("K", "n"),
        List.of("Pa.s^n", ""),
        new Power(false, false),
        new double[] {Math.exp(meanY - index * meanX), index},
        p -> new PowerLaw(p.get(0), p.get(1)));
  }

  private static Candidate bingham(Table table) {
    Line line = table.line(1);
    if (!(line.slope() > 0)) {
      return unsupported("Bingham", "the shear stress does not rise with the shear rate");
    }
    if (!(line.intercept() > NO_YIELD_STRESS * table.greatestStress())) {
      return unsupported("Bingham", "the best straight line has no positive yield stress");
    }
    return candidate(
        "Bingham",
        table,
        List.of("tau_y", "mu_p"),
        List.of("Pa", "Pa.s"),
        new Power(true, true),
        new double[] {line.intercept(), line.slope()},
        p -> new Bingham(p.get(0), p.get(1)));
  }

  private static Candidate herschelBulkley(Table table) {
    String name = "Herschel-Bulkley";
    if (table.size() <= LEAST_READINGS || table.rates() < LEAST_READINGS) {
      return unsupported(
          name, "three parameters need at least 4 readings at 3 different shear rates");
    }
    // For a given n the law is a straight line in γ̇ⁿ: the best n of a coarse net starts the
    // search.
    double index = 0;
    Line best = null;
    for (double n = LEAST_INDEX; n < 2; n += 0.05) {
      Line line = table.line(n);
      if (line.slope() > 0 && (best == null || line.sumOfSquares() < best.sumOfSquares())) {
        best = line;
        index = n;
      }
    }
    if (best == null) {
      return unsupported(name, "the shear stress does not rise with the shear rate");
    }
    if (!(best.intercept() > NO_YIELD_STRESS * table.greatestStress())) {
      return unsupported(name, "the best curve has no positive yield stress");
    }
    return candidate(
        name,
        table,
        List.of("tau_y", "K", "n"),
        List.of("Pa", "Pa.s^n", ""),
        new Power(true, false),
        new double[] {best.intercept(), best.slope(), index},
        p -> new HerschelBulkley(p.get(0), p.get(1), p.get(2)));
  }

  private static Candidate candidate(
      String name,
      Table table,
      List<String> symbols,
      List<String> units,
      Power law,
      double[] start,
      Function<List<Double>, Rheology> make) {
    LeastSquares.Fit fit;
    try {
      fit = LeastSquares.fit(name, law, table.rates, table.stresses, table.weights, start);
    } catch (UnsolvedException e) {
      return unsupported(name, e.getMessage());
    }
    if (law.yields && fit.parameters().get(0) < NO_YIELD_STRESS * table.greatestStress()) {
      return unsupported(name, "the best curve has no positive yield stress");
    }
    if (symbols.contains("n") && !(fit.parameters().get(symbols.indexOf("n")) >= LEAST_INDEX)) {
      return unsupported(name, HARDLY_RISES);
    }
    List<Parameter> parameters = new ArrayList<>();
    for (int i = 0; i < symbols.size(); i++) {
      parameters.add(
          new Parameter(
              symbols.get(i),
              units.get(i),
              fit.parameters().get(i),
              Math.sqrt(fit.covariance().get(i).get(i))));
    }
    double squares = fit.residuals().stream().mapToDouble(r -> r * r).sum();
    return new Candidate(
        name,
        Optional.of(make.apply(fit.parameters())),
        parameters,
        fit.covariance(),
        fit.residuals(),
        Math.sqrt(squares / table.size()),
        table.criterion(fit.weightedSumOfSquares(), symbols.size()),
        "");
  }

  /**
   * A law through readings that all lie on one shear rate, which tell its stress there and nothing
   * of its shape: that is assumed.
   */
  private static Candidate assumed(
      String name, Table table, double yieldShare, List<String> symbols, List<String> units) {
    double rate = table.lowestRate();
    double weight = table.sum((x, y) -> 1);
    double stress = table.sum((x, y) -> y) / weight;
    double consistency = (1 - yieldShare) * stress / Math.pow(rate, ASSUMED_INDEX);
    double variance =
        table.sum((x, y) -> (y - stress) * (y - stress)) / (table.size() - 1) / weight;
    double relative = Math.sqrt(variance) / stress;
    List<Double> values = new ArrayList<>(List.of(consistency, ASSUMED_INDEX));
    List<Double> errors = new ArrayList<>(List.of(relative * consistency, 0.0));
    if (yieldShare > 0) {
      values.add(0, yieldShare * stress);
      errors.add(0, relative * yieldShare * stress);
    }
    List<Parameter> parameters = new ArrayList<>();
    List<List<Double>> covariance = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      parameters.add(new Parameter(symbols.get(i), units.get(i), values.get(i), errors.get(i)));
      List<Double> row = new ArrayList<>();
      for (int j = 0; j < values.size(); j++) {
        row.add(errors.get(i) * errors.get(j));
      }
      covariance.add(row);
    }
    List<Double> residuals = Arrays.stream(table.stresses).map(y -> y - stress).boxed().toList();
    double squares = residuals.stream().mapToDouble(r -> r * r).sum();
    return new Candidate(
        name,
        Optional.of(
            yieldShare > 0
                ? new HerschelBulkley(yieldShare * stress, consistency, ASSUMED_INDEX)
                : new PowerLaw(consistency, ASSUMED_INDEX)),
        parameters,
        covariance,
        residuals,
        Math.sqrt(squares / table.size()),
        newtonian(table).criterion(),
        "");
  }

  private static Candidate unsupported(String name, String reason) {
    return new Candidate(
        name,
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        Double.NaN,
        Double.POSITIVE_INFINITY,
        reason);
  }

  private static List<String> warnings(Table table, List<Candidate> equallyGood) {
    List<String> warnings = new ArrayList<>();
    Candidate best = equallyGood.get(0);
    Rheology law = best.rheology().orElseThrow();
    if (table.rates() == 1) {
      warnings.add(
          String.format(
              Locale.ROOT,
              "All readings lie on one shear rate, %.3g 1/s: they tell the stress there and nothing"
                  + " of the shape of the curve. A liquid without a flow index, one of index %.2g"
                  + " and one with half of that stress as its yield stress are all tried. Take"
                  + " readings at 6 rates from 0.1 to 100 1/s.",
              table.lowestRate(),
              ASSUMED_INDEX));
      return warnings;
    }
    if (table.size() < ENOUGH_TO_RANK) {
      warnings.add(
          "Only "
              + table.size()
              + " readings: too few to choose between the models. Take at least 6, spread evenly"
              + " over the logarithm of the shear rate.");
    }
    double low = table.lowestRate() / 10;
    for (Candidate other : equallyGood.subList(1, equallyGood.size())) {
      warnings.add(
          String.format(
              Locale.ROOT,
              "%s and %s fit about equally well, but at %.3g 1/s, below the readings, they give"
                  + " %.3g Pa and %.3g Pa. The readings do not tell whether there is a yield"
                  + " stress; measure at lower shear rates before relying on one.",
              best.model(),
              other.model(),
              low,
              law.shearStressPa(low),
              other.rheology().orElseThrow().shearStressPa(low)));
    }
    if (table.highestRate() < 10 * table.lowestRate()) {
      warnings.add(
          String.format(
              Locale.ROOT,
              "The shear rates, %.3g to %.3g 1/s, span less than a factor of 10: the parameters"
                  + " hold there and hardly beyond.",
              table.lowestRate(),
              table.highestRate()));
    }
    warnings.addAll(ofTheFit(best, law));
    return warnings;
  }

  private static List<String> ofTheFit(Candidate best, Rheology law) {
    List<String> warnings = new ArrayList<>();
    for (Parameter parameter : best.parameters()) {
      if (parameter.standardError() > parameter.value() / 2) {
        warnings.add(
            String.format(
                Locale.ROOT,
                "%s of the %s fit is poorly determined: %.3g with a standard error of %.3g.",
                parameter.symbol(),
                best.model(),
                parameter.value(),
                parameter.standardError()));
      }
    }
    if (law.index() > 1) {
      warnings.add(
          String.format(
              Locale.ROOT,
              "The flow index is %.3g: a liquid that thickens with shear. Manure does not; look for"
                  + " sand, slip or turbulence in the viscometer.",
              law.index()));
    }
    return warnings;
  }

  /** The law τ = τy + K γ̇ⁿ with or without τy, with n free or 1. */
  private record Power(boolean yields, boolean linear) implements LeastSquares.Curve {
    @Override
    public double at(double x, double[] p) {
      int k = yields ? 1 : 0;
      double flowing = p[k] * (linear ? x : Math.pow(x, p[k + 1]));
      return yields ? p[0] + flowing : flowing;
    }

    @Override
    public double[] slopes(double x, double[] p) {
      int k = yields ? 1 : 0;
      double[] slopes = new double[p.length];
      if (yields) {
        slopes[0] = 1;
      }
      slopes[k] = linear ? x : Math.pow(x, p[k + 1]);
      if (!linear) {
        slopes[k + 1] = p[k] * slopes[k] * Math.log(x);
      }
      return slopes;
    }
  }

  private record Line(double intercept, double slope, double sumOfSquares) {}

  private interface Term {
    double of(double rate, double stress);
  }

  /** The readings as columns. */
  private static final class Table {
    private final double[] rates;
    private final double[] stresses;
    private final double[] weights;

    Table(List<ViscometerReading> readings, Weighting weighting) {
      rates = readings.stream().mapToDouble(ViscometerReading::shearRatePs).toArray();
      stresses = readings.stream().mapToDouble(ViscometerReading::shearStressPa).toArray();
      weights = new double[rates.length];
      for (int i = 0; i < weights.length; i++) {
        weights[i] = weighting == Weighting.SAME_PASCALS ? 1 : 1 / (stresses[i] * stresses[i]);
      }
    }

    int size() {
      return rates.length;
    }

    /** Different shear rates. */
    long rates() {
      return Arrays.stream(rates).distinct().count();
    }

    /** Standard error of the intercept of {@link #line}. */
    double interceptError(double index) {
      double weight = sum((x, y) -> 1);
      double first = sum((x, y) -> Math.pow(x, index));
      double second = sum((x, y) -> Math.pow(x, 2 * index));
      double variance = line(index).sumOfSquares() / (size() - 2);
      return Math.sqrt(variance * second / (weight * second - first * first));
    }

    double lowestRate() {
      return Arrays.stream(rates).min().orElseThrow();
    }

    double highestRate() {
      return Arrays.stream(rates).max().orElseThrow();
    }

    double greatestStress() {
      return Arrays.stream(stresses).max().orElseThrow();
    }

    double sum(Term term) {
      double sum = 0;
      for (int i = 0; i < rates.length; i++) {
        sum += weights[i] * term.of(rates[i], stresses[i]);
      }
      return sum;
    }

    /** The weighted straight line of stress against γ̇ⁿ. */
    Line line(double index) {
      double weight = sum((x, y) -> 1);
      double meanX = sum((x, y) -> Math.pow(x, index)) / weight;
      double meanY = sum((x, y) -> y) / weight;
      double slope =
          sum((x, y) -> (Math.pow(x, index) - meanX) * (y - meanY))
              / sum((x, y) -> Math.pow(Math.pow(x, index) - meanX, 2));
      double intercept = meanY - slope * meanX;
      double squares = sum((x, y) -> Math.pow(y - intercept - slope * Math.pow(x, index), 2));
      return new Line(intercept, slope, squares);
    }

    double criterion(double sumOfSquares, int parameters) {
      int n = size();
      // Readings made by a formula leave only rounding; below it no fit is better than another.
      double floor = 0;
      for (int i = 0; i < n; i++) {
        floor += weights[i] * Math.pow(ROUNDING * greatestStress(), 2);
      }
      double squares = Math.max(sumOfSquares, floor);
      if (n < ENOUGH_TO_RANK) {
        return Math.sqrt(squares / (n - parameters));
      }
      double k = parameters + 1;
      return n * Math.log(squares / n) + 2 * k + 2 * k * (k + 1) / (n - k - 1);
    }

    boolean equal(Candidate best, Candidate other) {
      if (rates() == 1) {
        return true;
      }
      return size() < ENOUGH_TO_RANK
          ? other.criterion() < EQUAL_DEVIATIONS * best.criterion()
          : other.criterion() - best.criterion() < EQUAL_CRITERIA;
    }
  }
}
