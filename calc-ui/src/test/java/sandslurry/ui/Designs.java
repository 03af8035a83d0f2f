package sandslurry.ui;

import java.util.function.Consumer;
import sandslurry.design.Design;
import sandslurry.design.DesignDocument;

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

  private Designs() {}

  static DesignDocument example(String file) {
    return Examples.all().stream()
        .filter(e -> e.file().equals(file))
        .findFirst()
        .orElseThrow()
        .document();
  }

  static FormModel model(String example) {
    FormModel model = new FormModel(AT_ONCE);
    model.startFrom(example(example));
    return model;
  }

  /** A line with a lane, a sieve analysis, two runs and a rotodynamic pump: nearly every field. */
  static DesignDocument everything() {
    return example("parlor-line.json")
        .insert("/route/runs", 1, "{\"bore\": \"100 mm\", \"roughness\": \"0.1 mm\"}")
        .with("/route/runs/1/length", "10 ft")
        .with("/lane/length", "100 ft")
        .with("/lane/width", "10 ft")
        .with("/lane/slope", "0.25 %")
        .with("/lane/flow", "460 gpm")
        .with("/lane/sandStorageDepth", "12 in")
        .without("/sand/gradation")
        .insert("/sand/gradation", 0, "{\"size\": \"2 mm\", \"passing\": \"100 %\"}")
        .insert("/sand/gradation", 1, "{\"size\": \"0.5 mm\", \"passing\": \"60 %\"}")
        .insert("/sand/gradation", 2, "{\"size\": \"0.1 mm\", \"passing\": \"2 %\"}");
  }
}
