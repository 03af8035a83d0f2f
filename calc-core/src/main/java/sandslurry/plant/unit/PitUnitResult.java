package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.plant.Figure;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.pit.PitMixing;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * What a pit does at a balance.
 *
 * @param unit the pit
 * @param balance the balance
 * @param porosity pores over bulk volume of settled sand
 * @param stirred its feed at the shear rate at which its sand settles; empty without a mixer
 * @param mixing what its mixer does with it
 */
record PitUnitResult(
    PitUnit unit,
    SteadyBalance balance,
    double porosity,
    Optional<UnitFeed> stirred,
    Optional<PitMixing> mixing)
    implements UnitResult {
  /**
   * Mixers commonly run a little above the just-suspended speed; twice that is far above (common
   * practice, no source).
   */
  private static final double FAST_MIXER = 2;

  /** Less sand than this share does not count as settled in a pit. */
  private static final double LITTLE = 1e-3;

  private static final double SOON_S = InUnit.DAY.si(365);
  private static final double LONGEST_STAY_S = InUnit.DAY.si(1e6);

  private Stream feed() {
    return balance.feed(unit.name());
  }

  private double overflowRateMps() {
    return feed().volumeM3ps() / unit.areaM2();
  }

  private double settledKgps() {
    return balance.stream(unit.settled()).sandKgps();
  }

  /** Share of its sand that settles; 0 without sand. */
  private double settledShare() {
    double fed = feed().sandKgps();
    return fed > 0 ? Math.min(1, settledKgps() / fed) : 0;
  }

  @Override
  public List<Figure> figures() {
    Figures figures = new Figures();
    mixing.ifPresent(
        found ->
            figures
                .add("speed of the mixer", Kind.FREQUENCY, found.speedRps())
                .add(
                    "ratio to the speed that just suspends all sand",
                    Kind.NUMBER,
                    found.speedRatio())
                .add("power of the mixer", Kind.POWER, found.powerW())
                .add(
                    "detention time", Kind.DAYS, Math.min(found.residenceTimeS(), LONGEST_STAY_S)));
    boolean sand = feed().sandKgps() > 0;
    if (unit.isPool()) {
      figures.add(
          "solids of the liquor above what settles",
          Kind.PERCENT,
          balance.stream(unit.pit().overflow().orElseThrow()).totalSolids());
    } else if (sand) {
      figures
          .add("plan area as a square of side", Kind.LENGTH, Math.sqrt(unit.areaM2()))
          .add("overflow rate", Kind.FALL, overflowRateMps());
    }
    if (sand) {
      figures
          .add("sand that settles", Kind.MASS_PER_DAY, settledKgps())
          .add("share of its sand that settles", Kind.PERCENT, settledShare());
    }
    return figures.all();
  }

  @Override
  public void steps(Trace trace) {
    Sheet sheet = Sheet.of(PitUnitResult.class, trace);
    double fed = feed().sandKgps();
    if (!(fed > 0) || unit.isPool()) {
      return;
    }
    sheet.begin("pit " + unit.name(), "");
    mixing.ifPresent(
        found ->
            found.steps(
                unit.mixer().orElseThrow().impeller(), stirred.orElseThrow(), sheet.trace()));
    sheet.step("rate", overflowRateMps(), feed().volumeM3ps(), unit.areaM2());
    double settled = sheet.step("settled", settledKgps());
    if (settled > LITTLE * fed) {
      sheet.step("share", settled / fed, settled, fed);
      double volume = unit.pit().weirVolumeM3();
      double density = feed().constituents().sandDensityKgM3();
      sheet.step(
          "fills",
          volume * density * (1 - porosity) / (4 * settled),
          volume,
          density,
          porosity,
          settled);
    }
  }

  @Override
  public void judge(UnitFindings found) {
    mixing.ifPresent(mixed -> mixing(found, mixed, stirred.orElseThrow()));
    settled(found);
  }

  private void mixing(UnitFindings findings, PitMixing mixed, UnitFeed feed) {
    if (!(feed.sandTotalKgps() > 0)) {
      return;
    }
    boolean little = mixed.speedRatio() < 1;
    boolean much = mixed.speedRatio() > FAST_MIXER;
    (little
            ? findings.found("mix-little", Severity.CAUTION, unit.name())
            : much
                ? findings.found("mix-much", Severity.CAUTION, unit.name())
                : findings.found("mix-just", Severity.NOTE, unit.name()))
        .with("just", Kind.FREQUENCY, mixed.speedRps() / Math.max(mixed.speedRatio(), 1e-9))
        .with("speed", Kind.FREQUENCY, mixed.speedRps())
        .with("stays", Kind.PERCENT, mixed.leftKgps(feed) / feed.sandTotalKgps())
        .with("along", Kind.PERCENT, mixed.carriedKgps(feed) / feed.sandTotalKgps())
        .why(mixed.speedRps() > 0 ? "zwietering" : "mixer-at-rest")
        .cure(mixed.speedRps() > 0 && (little || much), little ? "mix-faster" : "mix-slower")
        .add();
  }

  /** Sand that settles in a pit, and what the balance takes for granted about it. */
  private void settled(UnitFindings findings) {
    if (!(feed().sandKgps() > 0) || unit.isPool()) {
      return;
    }
    boolean mixed = unit.mixer().isPresent();
    Optional<Figure> fills = findings.fillsIn(unit.name());
    if (fills.isEmpty() || settledShare() < LITTLE) {
      findings
          .found("none-settles", Severity.NOTE, unit.name())
          .with("rate", Kind.FALL, overflowRateMps())
          .why(mixed ? "mixer-holds" : "rate-holds")
          .add();
      return;
    }
    boolean soon = fills.get().range().base() < SOON_S;
    Found found =
        findings
            .found("sand-in-pit", soon ? Severity.CAUTION : Severity.NOTE, unit.name())
            .with("share", Kind.PERCENT, settledShare())
            .with("settles", Kind.MASS_PER_DAY, settledKgps())
            .with("rate", Kind.FALL, overflowRateMps())
            .why("stays");
    findings
        .with(found, "fills", fills.get())
        .why("quarter")
        .why(mixed ? "mixer-misses" : "no-mixer");
    found.cure(soon, "dig-pit").add();
  }
}
