package sandslurry.ui;

import java.awt.BorderLayout;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingWorker;
import net.miginfocom.swing.MigLayout;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.PipeSystem;
import sandslurry.report.section.SizingSection;
import sandslurry.study.Sizing;
import sandslurry.units.UnitSystem;

/**
 * Which standard pipes the line fits into, and the duty of its pump: sized when asked for, off the
 * event thread. The runs of the design need no pipe.
 */
final class SizeView {
  private static final String EVERY = "all standards";
  private static final String HOW =
      "Lays the line in every standard pipe, evaluates each as a whole and ranks those in which"
          + " nothing fails. Runs without pipe and bore are sized; when every run has one, all that"
          + " lie in a standard pipe.";

  private static final String NONE_AT_THESE =
      "With \"Flow rates of each pipe's own\" it shows from which flow rate each pipe would carry the"
          + " sand.";

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JComboBox<String> system = new JComboBox<>();
  private final JCheckBox ownFlow = new JCheckBox("Flow rates of each pipe's own");
  private final JButton size = new JButton("Size the line");
  private final HtmlView page = new HtmlView("sizing", "Sizing");
  private DesignDocument document = DesignDocument.empty();
  private Work work;

  SizeView() {
    system.setModel(
        new DefaultComboBoxModel<>(
            Stream.concat(Stream.of(EVERY), PipeCatalogue.systems().stream())
                .toArray(String[]::new)));
    JLabel label = new JLabel("Pipe standard");
    label.setLabelFor(system);
    Look.named(system, "sizing system", "Pipe standard to choose from");
    Look.named(ownFlow, "sizing own flow", "Flow rates of each pipe's own");
    Look.named(size, "size the line", "Size the line");
    ownFlow.setToolTipText(
        "From the lowest flow rate that carries the sand in it; else those of the design");
    JPanel above = new JPanel(new MigLayout("insets 6 10 2 10", "[]6lp[]16lp[]16lp[]"));
    above.add(label);
    above.add(system);
    above.add(ownFlow);
    above.add(size);
    panel.add(above, BorderLayout.NORTH);
    panel.add(page.component(), BorderLayout.CENTER);
    size.addActionListener(event -> start());
  }

  JPanel component() {
    return panel;
  }

  /** Another design is shown: what was found of the one before belongs to it no more. */
  void show(DesignDocument shown) {
    if (!shown.equals(document)) {
      stop();
      document = shown;
      page.show(FindingsPage.plain(HOW));
    }
  }

  private void stop() {
    if (work != null) {
      work.cancel(true);
      work = null;
    }
    size.setEnabled(true);
  }

  private void start() {
    stop();
    size.setEnabled(false);
    page.show(FindingsPage.plain("The line is being sized."));
    work = new Work();
    work.execute();
  }

  private Set<PipeSystem> chosen() {
    return PipeCatalogue.findSystem((String) system.getSelectedItem())
        .map(EnumSet::of)
        .orElse(EnumSet.allOf(PipeSystem.class));
  }

  private static String html(Sizing sizing, UnitSystem units) {
    return sizing.problems().isEmpty()
        ? HtmlBlocks.of(SizingSection.of(sizing, units, Integer.MAX_VALUE), "")
        : FindingsPage.plain(
            sizing.problems().stream().map(Problem::toString).collect(Collectors.joining("; ")));
  }

  /** One sizing. */
  private final class Work extends SwingWorker<String, Void> {
    private final DesignDocument design = document;
    private final Set<PipeSystem> systems = chosen();
    private final boolean own = ownFlow.isSelected();

    @Override
    protected String doInBackground() {
      Sizing sizing = own ? Sizing.withFlow(design, systems) : Sizing.of(design, systems);
      UnitSystem units = design.text("/units").equals("US") ? UnitSystem.US : UnitSystem.METRIC;
      return (sizing.fits().isEmpty() && !own ? FindingsPage.plain(NONE_AT_THESE) : "")
          + sizing
              .nearest(design)
              .map(nearest -> HtmlBlocks.of(SizingSection.nearest(nearest), ""))
              .orElse("")
          + html(sizing, units);
    }

    @Override
    protected void done() {
      if (work != this) {
        return;
      }
      work = null;
      size.setEnabled(true);
      try {
        page.show(get());
      } catch (CancellationException stopped) {
        page.show(FindingsPage.plain(HOW));
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      } catch (ExecutionException e) {
        page.show(FindingsPage.plain("The line could not be sized: " + e.getCause()));
      }
    }
  }
}
