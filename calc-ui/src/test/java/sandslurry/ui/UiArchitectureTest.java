package sandslurry.ui;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.FileReader;
import java.io.FileWriter;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.plaf.ComponentUI;
import org.junit.jupiter.api.Test;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.WholeFile;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.separation.lane.KeptClass;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneTrade;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.deposition.DepositionVelocityModel;

class UiArchitectureTest {
  private static final JavaClasses UI =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("sandslurry.ui");

  @Test
  void theFormComputesNothingItOnlyShowsWhatWasComputed() {
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                    "sandslurry.settling..",
                    "sandslurry.transport..",
                    "sandslurry.pump..",
                    "sandslurry.separation..",
                    "sandslurry.numeric..",
                    "sandslurry.correlation..")
                .and(
                    not(
                        belongToAnyOf(
                            Correlation.class,
                            Estimate.class,
                            KeptClass.class,
                            DepositionJudgement.class,
                            DepositionVelocities.class,
                            DepositionVelocityModel.class,
                            HydrocycloneModel.class,
                            HydrocycloneModels.class,
                            LaneFilling.class,
                            LaneFilling.Point.class,
                            LaneTrade.class))))
        .check(UI);
  }

  @Test
  void theModelOfTheFormKnowsNoSwing() {
    noClasses()
        .that()
        .belongToAnyOf(
            FormModel.class,
            History.class,
            Outcome.class,
            Evaluator.class,
            Charts.class,
            ChartData.class,
            FieldSpec.class,
            FieldNames.class,
            Examples.class,
            JudgeCommand.class,
            BadInputException.class)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javax.swing..", "java.awt..", "org.jfree..")
        .check(UI);
  }

  /**
   * Each of them refuses the thread of the window: {@link FileWorkTest}. The main class writes to
   * the console.
   */
  @Test
  void filesAreTouchedAtFewDoors() {
    noClasses()
        .that()
        .doNotBelongToAnyOf(
            FormFile.class,
            OutputFile.class,
            Recovery.class,
            Examples.class,
            BadInputException.class,
            Main.class)
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(
            Files.class,
            FileChannel.class,
            FileInputStream.class,
            FileOutputStream.class,
            FileReader.class,
            FileWriter.class,
            RandomAccessFile.class,
            WholeFile.class)
        .orShould()
        .callMethod(DesignDocument.class, "load", Path.class)
        .orShould()
        .callMethod(DesignDocument.class, "save", Path.class)
        .check(UI);
  }

  @Test
  void theMainClassIsTheOnlyDoor() {
    // The look and feel makes its delegates by their names, which takes public ones.
    classes()
        .that()
        .arePublic()
        .and()
        .areNotAssignableTo(ComponentUI.class)
        .should()
        .be(Main.class)
        .check(UI);
  }
}
