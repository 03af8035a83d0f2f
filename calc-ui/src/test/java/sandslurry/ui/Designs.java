package sandslurry.ui;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;

/** Designs and an evaluator for the tests. */
final class Designs {
  /** Evaluates at once, on the same thread. */
  static final Evaluator AT_ONCE =
      new Evaluator() {
        @Override
        public void request(Design design, Consumer<Outcome> done) {
          done.accept(Outcome.of(design));
        }

        @Override
        public void cancel() {}
      };

  /** Evaluates nothing. */
  static final Evaluator NEVER =
      new Evaluator() {
        @Override
        public void request(Design design, Consumer<Outcome> done) {}

        @Override
        public void cancel() {}
      };

  private static final Map<DesignDocument, Assessment> ASSESSED = new ConcurrentHashMap<>();

  private Designs() {}

  static DesignDocument example(String file) {
    return Examples.all().stream()
        .filter(e -> e.file().equals(file))
        .findFirst()
        .orElseThrow()
        .document();
  }

  /** What comes of a design, worked out once for all tests that look at it. */
  static Assessment assessment(DesignDocument document) {
    return ASSESSED.computeIfAbsent(
        document, asked -> Evaluation.assess(asked.read().design().orElseThrow()));
  }

  static FormModel model(String example) {
    FormModel model = new FormModel(AT_ONCE);
    model.startFrom(example(example));
    return model;
  }

  /** A line with a lane, a sieve analysis, two runs and a rotodynamic pump: nearly every field. */
  static DesignDocument everything() {
    return example("parlor-line.json")
        .insert("/lines/0/route/runs", 1, "{\"bore\": \"100 mm\", \"roughness\": \"0.1 mm\"}")
        .with("/lines/0/route/runs/1/length", "10 ft")
        .with("/lane/length", "100 ft")
        .with("/lane/width", "10 ft")
        .with("/lane/slope", "0.25 %")
        .with("/lane/flow", "460 gpm")
        .with("/lane/sandStorageDepth", "12 in")
        .with("/lines/0/pump/motorRating", "25 hp")
        .insert(
            "/lines/0/pump/others",
            0,
            "{\"curveSpeed\": \"1750 rpm\", \"standby\": \"yes\", \"curve\": ["
                + "{\"flow\": \"0 gpm\", \"head\": \"95 ft\", \"efficiency\": \"0 %\"},"
                + "{\"flow\": \"300 gpm\", \"head\": \"85 ft\", \"efficiency\": \"48 %\"},"
                + "{\"flow\": \"600 gpm\", \"head\": \"60 ft\", \"efficiency\": \"45 %\"}]}")
        .with("/lines/0/suction/pipe/system", "ASTM D1785")
        .with("/lines/0/suction/pipe/size", "4 in")
        .with("/lines/0/suction/pipe/class", "Sch 40")
        .with("/lines/0/suction/length", "8 ft")
        .with("/lines/0/states/wornHead", "10 %")
        .with("/lines/0/operation/dailyVolume", "100 m3")
        .with("/screw/diameter", "16 in")
        .with("/screw/speed", "40 rpm")
        .with("/screw/length", "60 ft")
        .with("/screw/load", "3 L/s")
        .with("/screw/bulkDensity", "1200 kg/m3")
        .with("/gravityRun/bore", "12 in")
        .with("/gravityRun/slope", "1 %")
        .with("/gravityRun/flow", "30 L/s")
        .without("/sand/gradation")
        .insert("/sand/gradation", 0, "{\"size\": \"2 mm\", \"passing\": \"100 %\"}")
        .insert("/sand/gradation", 1, "{\"size\": \"0.5 mm\", \"passing\": \"60 %\"}")
        .insert("/sand/gradation", 2, "{\"size\": \"0.1 mm\", \"passing\": \"2 %\"}");
  }
}
