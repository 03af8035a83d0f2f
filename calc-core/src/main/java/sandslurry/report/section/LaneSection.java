package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.lane.LaneCourse;
import sandslurry.design.lane.LaneSpec;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.separation.capture.CaughtSize;
import sandslurry.separation.lane.LaneClass;
import sandslurry.separation.lane.LaneCycle;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneResult;
import sandslurry.separation.lane.LaneTrade;
import sandslurry.units.Kind;

/** The settling lane. */
record LaneSection(Assessment assessment, Page page) implements SectionWriter {
  private static final Column<LaneResult> DETENTION =
      Column.of("detention time, clean", Kind.TIME, LaneResult::residenceTimeS, "detention-time");
  private static final Column<LaneResult> OVERFLOW =
      Column.of(
          "overflow rate (surface loading)",
          Kind.FALL,
          lane -> lane.basin().overflowVelocityMps(),
          "overflow-rate");
  private static final Column<LaneResult> KEPT =
      Column.spread(
          "sand kept, average over one cleaning cycle",
          Kind.PERCENT,
          lane ->
              Optional.of(
                  new Column.Spread(
                      lane.cycle().cautious().meanRecovery(),
                      lane.cycle().likely().meanRecovery(),
                      lane.cycle().hopeful().meanRecovery())),
          "sand-kept");

  /** What other programs are told of the lane. */
  static final List<Column<LaneResult>> FIGURES = List.of(KEPT, OVERFLOW, DETENTION);

  void write() {
    assessment.lane().ifPresent(this::lane);
  }

  /** The lanes of a plant, which are told with the plant. */
  void ofPlant() {
    assessment
        .lanes()
        .forEach(
            (name, course) -> {
              if (!name.equals(LaneCourse.OWN)) {
                heading(1, name);
                course(course, "; where there are several reaches, in the first alone");
              }
            });
  }

  private void lane(LaneResult lane) {
    heading(1, LaneCourse.OWN);
    LaneSpec spec = assessment.design().lane().orElseThrow();
    facts(
        lane,
        List.of(
            Column.text(
                "length by width",
                l -> show(Kind.LENGTH, spec.lengthM()) + " by " + show(Kind.LENGTH, spec.widthM())),
            Column.of("flow", Kind.FLOW, l -> spec.flowM3ps()),
            Column.of("depth of water, clean", Kind.DEPTH, l -> l.flow().depthM()),
            Column.of("mean velocity, clean", Kind.VELOCITY, l -> l.flow().velocityMps()),
            Column.of("Froude number", Kind.NUMBER, l -> l.flow().froudeNumber()),
            Column.of("Reynolds number", Kind.NUMBER, LaneResult::reynoldsNumber),
            DETENTION,
            OVERFLOW,
            Column.of("shear velocity", Kind.FALL, l -> l.flow().shearVelocityMps()),
            Column.text("size of which half is captured, clean", l -> caught(l.caughtHalf())),
            Column.text("size of which 95 % is captured, clean", l -> caught(l.caughtMost())),
            Column.of("sand entering", Kind.MASS_PER_DAY, LaneResult::sandKgPs),
            Column.of("sand in the full storage depth", Kind.MASS, LaneResult::storageKg),
            Column.text("from clean to clean-out", l -> interval(l.cycle().likely())),
            KEPT.saying(l -> kept(l.cycle())),
            Column.text(
                "sand kept, clean and just before cleaning",
                l ->
                    show(Kind.PERCENT, l.cycle().likely().points().get(0).recovery())
                        + " and "
                        + show(Kind.PERCENT, l.cycle().likely().lastRecovery()))));
    classes(lane);
    course(assessment.lanes().get(LaneCourse.OWN), "");
  }

  private String interval(LaneFilling filling) {
    return filling.intervalS().isPresent()
        ? show(Kind.DAYS, filling.intervalS().getAsDouble())
        : "never";
  }

  private String kept(LaneCycle cycle) {
    return show(Kind.PERCENT, cycle.likely().meanRecovery())
        + " (cautious "
        + show(Kind.PERCENT, cycle.cautious().meanRecovery())
        + ", optimistic "
        + show(Kind.PERCENT, cycle.hopeful().meanRecovery())
        + ")";
  }

  private void classes(LaneResult lane) {
    heading(2, "The clean lane by size class");
    tableOf(
        lane.classes(),
        List.of(
            Column.of("grain", Kind.GRAIN, grains -> grains.size().meanM()),
            Column.of("share", Kind.PERCENT, LaneClass::share),
            Column.of("settles", Kind.FALL, LaneClass::hinderedVelocityMps),
            Column.of("in", Kind.TIME, LaneClass::fallTimeS),
            Column.of("Stokes", Kind.TIME, LaneClass::stokesFallTimeS),
            Column.of("ideal", Kind.PERCENT, grains -> grains.capture().ideal()),
            Column.of("turbulent", Kind.PERCENT, grains -> grains.capture().campDobbins()),
            Column.of("mixed", Kind.PERCENT, grains -> grains.capture().vetter()),
            Column.of("scour", Kind.VELOCITY, LaneClass::scourVelocityMps),
            Column.of("w/u*", Kind.NUMBER, LaneClass::suspensionRatio),
            Column.of("kept: cautious", Kind.PERCENT, grains -> grains.kept().cautious()),
            Column.of("expected", Kind.PERCENT, grains -> grains.kept().likely()),
            Column.of("optimistic", Kind.PERCENT, grains -> grains.kept().hopeful())));
    paragraph(
        "What reaches the floor: ideal, plug flow (Hazen), an upper bound; turbulent, Camp and"
            + " Dobbins; mixed, Vetter, a lower bound. What is kept of it: cautious, grains that"
            + " the flow moves are lost; expected, only those that turbulence also holds up (w/u*"
            + " below 1); optimistic, none. Stokes' law gives times that are too short for sand and"
            + " is shown to say so.");
  }

  private void course(LaneCourse course, String bounds) {
    heading(2, "Sand captured against organic matter");
    boolean known = course.organicMatterKnown();
    List<LaneTrade> points = new ArrayList<>();
    for (int i = 2; i < course.trade().size(); i += 3) {
      points.add(course.trade().get(i));
    }
    points.add(course.own());
    tableOf(
        points,
        List.of(
            Column.text(
                head("velocity", Kind.VELOCITY),
                point ->
                    number(Kind.VELOCITY, point.velocityMps())
                        + (point == course.own() ? ", now" : "")),
            Column.of("depth needed", Kind.DEPTH, LaneTrade::depthM),
            Column.of("sand captured", Kind.PERCENT, LaneTrade::sandRecovery),
            Column.of("fibre captured", Kind.PERCENT, LaneTrade::fibreRetained),
            Column.text(
                "organic matter in the dry deposit [%]",
                point -> known ? number(Kind.PERCENT, point.foreignMatter()) : "not known")));
    paragraph(
        "A slower lane captures more sand and more fibre. Width, length and flow rate stay; a weir"
            + " holds the depth. These are expected values: what turbulence holds up is lost again"
            + bounds
            + "."
            + (known
                ? ""
                : " The liquid is given without its solids, so the organic matter is not known."));
    heading(2, "How it fills");
    tableOf(
        moments(course.filling().points()),
        List.of(
            Column.of("time", Kind.DAYS, LaneFilling.Point::timeS),
            Column.of("deposit", Kind.DEPTH, moment -> moment.depositsM().get(0)),
            Column.of("water above it", Kind.DEPTH, moment -> moment.depthsM().get(0)),
            Column.of("velocity", Kind.VELOCITY, moment -> moment.velocitiesMps().get(0)),
            Column.of("sand captured", Kind.PERCENT, LaneFilling.Point::recovery)));
    paragraph(
        "The deposit is spread evenly, as it would be after levelling; a real one is a wedge from"
            + " the inlet. "
            + switch (course.filling().end()) {
              case FULL -> "It ends when the storage depth is full.";
              case ON_SCHEDULE -> "It ends when it is time to clean.";
              case KEEPS_TOO_LITTLE -> "It ends when the lane keeps less than half of its sand.";
              case NO_SAND -> "No sand is fed, or a trace.";
            });
  }

  /** About ten of the moments, the last among them. */
  private static List<LaneFilling.Point> moments(List<LaneFilling.Point> points) {
    int step = Math.max(1, points.size() / 10);
    List<LaneFilling.Point> some = new ArrayList<>();
    for (int i = 0; i < points.size(); i += step) {
      some.add(points.get(i));
    }
    if ((points.size() - 1) % step != 0) {
      some.add(points.get(points.size() - 1));
    }
    return some;
  }

  private String caught(CaughtSize size) {
    return "grains of "
        + show(Kind.GRAIN, size.campDobbinsM())
        + " (ideal "
        + show(Kind.GRAIN, size.idealM())
        + ", mixed "
        + show(Kind.GRAIN, size.vetterM())
        + ")";
  }
}
