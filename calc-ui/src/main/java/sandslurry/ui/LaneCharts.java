package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.lane.LaneCourse;
import sandslurry.separation.lane.KeptClass;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneTrade;
import sandslurry.ui.ChartData.Point;
import sandslurry.ui.ChartData.Series;
import sandslurry.ui.ChartData.Style;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The charts of the lanes of an assessment, in the units of its design. */
record LaneCharts(Assessment assessment) {
  private static final Style[] STYLES = {Style.DASHED, Style.DOTTED, Style.DASH_DOT};

  private UnitSystem units() {
    return assessment.design().units();
  }

  private String axis(String text, Kind<?> kind) {
    return text + " [" + kind.symbol(units()) + "]";
  }

  private double percent(double share) {
    return Kind.PERCENT.number(units(), share);
  }

  private static <T> Series series(String name, Style style, List<T> of, Function<T, Point> point) {
    return new Series(name, style, of.stream().map(point).toList());
  }

  /** Sand kept, and what of the dry deposit is not sand, against the velocity in the lane. */
  ChartData trade(String lane) {
    LaneCourse course = assessment.lanes().get(lane);
    List<Series> sand = new ArrayList<>();
    List<Series> organic = new ArrayList<>();
    sand.add(curve("sand kept", Style.SOLID, course.trade(), LaneTrade::sandRecovery));
    sand.add(
        curve(
            "sand kept by this lane, clean",
            Style.POINTS,
            List.of(course.own()),
            LaneTrade::sandRecovery));
    if (course.organicMatterKnown()) {
      sand.add(curve("fibre kept", Style.DOTTED, course.trade(), LaneTrade::fibreRetained));
      organic.add(
          curve(
              "not sand, of the dry deposit (right)",
              Style.DASHED,
              course.trade(),
              LaneTrade::foreignMatter));
      organic.add(
          curve(
              "the same in this lane, clean (right)",
              Style.POINTS,
              List.of(course.own()),
              LaneTrade::foreignMatter));
    }
    String title =
        course.organicMatterKnown()
            ? "What the lane keeps, and how clean the sand is"
            : "Sand kept; the carrier is given without solids, so organic matter is not known";
    return ChartData.lines(
            title,
            axis("Velocity in the clean lane", Kind.VELOCITY),
            axis("Kept of what comes", Kind.PERCENT),
            false,
            sand)
        .withShares()
        .withRight(axis("Organic matter in the dry sand", Kind.PERCENT), organic);
  }

  private Series curve(
      String name, Style style, List<LaneTrade> points, ToDoubleFunction<LaneTrade> share) {
    return series(
        name,
        style,
        points,
        p ->
            new Point(
                Kind.VELOCITY.number(units(), p.velocityMps()), percent(share.applyAsDouble(p))));
  }

  /** What the lane keeps of every grain size. */
  ChartData capture(String name) {
    LaneCourse course = assessment.lanes().get(name);
    List<Series> series =
        new ArrayList<>(
            List.of(
                kept("optimistic: nothing is lost again", Style.DASHED, course, KeptClass::hopeful),
                kept("expected", Style.SOLID, course, KeptClass::likely),
                kept("cautious: what moves is lost", Style.DOTTED, course, KeptClass::cautious)));
    return ChartData.lines(
            "Sand kept by grain size",
            axis("Grain size", Kind.GRAIN),
            axis("Kept", Kind.PERCENT),
            true,
            series)
        .withShares();
  }

  private Series kept(
      String name, Style style, LaneCourse course, ToDoubleFunction<KeptClass> share) {
    return series(
        name,
        style,
        course.classes(),
        c -> new Point(Kind.GRAIN.number(units(), c.sizeM()), percent(share.applyAsDouble(c))));
  }

  /** What the lane keeps as its deposit rises; nothing when there is no course to follow. */
  Optional<ChartData> filling(String name) {
    LaneFilling filling = assessment.lanes().get(name).filling();
    if (filling.points().size() < 2) {
      return Optional.empty();
    }
    List<Series> kept =
        List.of(
            series(
                "sand kept at that time",
                Style.SOLID,
                filling.points(),
                p -> new Point(days(p), percent(p.recovery()))));
    List<Series> deposits = new ArrayList<>();
    int reaches = filling.points().get(0).depositsM().size();
    for (int i = 0; i < reaches; i++) {
      int reach = i;
      deposits.add(
          series(
              "deposit" + (reaches == 1 ? "" : " in reach " + (i + 1)) + " (right)",
              STYLES[i % STYLES.length],
              filling.points(),
              p -> new Point(days(p), Kind.BORE.number(units(), p.depositsM().get(reach)))));
    }
    String over =
        String.format(
            Locale.ROOT,
            "From clean to clean-out the lane keeps %s of its sand",
            units().show(Kind.PERCENT, filling.meanRecovery()));
    return Optional.of(
        ChartData.lines(
                over,
                axis("Time since it was clean", Kind.DAYS),
                axis("Sand kept", Kind.PERCENT),
                false,
                kept)
            .withShares()
            .withRight(axis("Thickness of the deposit", Kind.BORE), deposits));
  }

  /** Why there is no course of the filling. */
  String whyNotFilling(String name) {
    LaneFilling.Point clean = assessment.lanes().get(name).filling().points().get(0);
    return "Clean, this lane keeps "
        + units().show(Kind.PERCENT, clean.recovery())
        + " of its sand: too little to follow how it fills.";
  }

  private double days(LaneFilling.Point point) {
    return Kind.DAYS.number(units(), point.timeS());
  }
}
