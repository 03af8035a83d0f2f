package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import com.sun.net.httpserver.HttpServer;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JEditorPane;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JTable;
import javax.swing.JToolTip;
import javax.swing.text.html.HTML;
import javax.swing.text.html.HTMLDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;

/** No text of a design is drawn as markup, so that a file cannot make the form call a server. */
class NoMarkupTest {
  private static final long FETCHED_MS = 1_000;

  private final AtomicInteger calls = new AtomicInteger();
  private HttpServer server;

  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  @BeforeEach
  void serve() throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          calls.incrementAndGet();
          exchange.sendResponseHeaders(404, -1);
          exchange.close();
        });
    server.start();
  }

  @AfterEach
  void stop() {
    server.stop(0);
  }

  private String image() {
    return "<img src='http://127.0.0.1:" + server.getAddress().getPort() + "/x.png'>";
  }

  private String hostile() {
    return "<html>" + image();
  }

  private int callsSoon() throws InterruptedException {
    Thread.sleep(FETCHED_MS);
    return calls.get();
  }

  @Test
  void theServerWouldHearOfAnImageThatIsDrawn() throws Exception {
    onEventThread(
        () -> {
          JLabel careless = new JLabel();
          careless.putClientProperty("html.disable", null);
          careless.setText(hostile());
          paint(careless);
          return null;
        });
    assertThat(callsSoon()).isPositive();
  }

  /** Designs whose every text is replaced, one text at a time and all at once. */
  private List<DesignDocument> designs() throws DesignTextException {
    List<DesignDocument> designs = new ArrayList<>();
    designs.add(named(Designs.everything()));
    designs.add(named(Designs.example("closed-loop-dairy.json")));
    designs.add(streams(named(Designs.example("lines-of-a-plant.json"))));
    designs.add(renamed(Designs.everything(), text -> hostile()));
    designs.add(Designs.everything().with("/" + hostile().replace("/", "~1"), "1"));
    designs.add(Designs.everything().with("/x'>" + image().replace("/", "~1"), "1"));
    designs.add(
        Designs.everything().with("/lines/0/route/runs/0/'\">" + image().replace("/", "~1"), "1"));
    return designs;
  }

  /** Names that may be anything are hostile, so that the design is evaluated and shown. */
  private DesignDocument named(DesignDocument document) {
    DesignDocument named = document.with("/title", hostile()).with("/notes", hostile());
    for (String list :
        new String[] {
          "/lines", "/lines/0/route/runs", "/plant/pens", "/plant/machines", "/lines/0/pump/others"
        }) {
      for (int i = 0; i < document.size(list); i++) {
        named = named.with(list + "/" + i + "/name", hostile() + i);
      }
    }
    for (int i = 0; i < document.size("/plant/units"); i++) {
      named = named.with("/plant/units/" + i + "/name", hostile() + "u" + i);
    }
    return named;
  }

  /** A stream under a hostile name wherever it is named. */
  private DesignDocument streams(DesignDocument document) throws DesignTextException {
    DesignDocument renamed =
        DesignDocument.parse(document.toString().replace("screened", hostile() + "s"));
    assertThat(renamed.read().problems()).isEmpty();
    return renamed.with("/titleBlock/project", hostile()).with("/titleBlock/client", hostile());
  }

  private static DesignDocument renamed(DesignDocument document, UnaryOperator<String> change) {
    DesignDocument renamed = document;
    for (String pointer : pointers(document)) {
      renamed = renamed.with(pointer, change.apply(document.text(pointer)));
    }
    return renamed;
  }

  /** Every text below the form's fields, found by walking the form itself. */
  private static List<String> pointers(DesignDocument document) {
    List<String> found = new ArrayList<>();
    FormModel model = new FormModel(Designs.NEVER);
    model.startFrom(document);
    InputsPanel inputs = new InputsPanel(model);
    for (JComponent component : PanelsTest.all(inputs.component())) {
      String name = component.getName();
      if (name != null && name.startsWith("/") && !document.text(name).isEmpty()) {
        found.add(name);
      }
    }
    return found;
  }

  @Test
  void aHostileFileMakesTheFormCallNoServer() throws Exception {
    onEventThread(
        () -> {
          for (DesignDocument design : designs()) {
            FormModel model = new FormModel(Designs.AT_ONCE);
            InputsPanel inputs = new InputsPanel(model);
            ResultsPanel results = new ResultsPanel(model, inputs::focus);
            model.startFrom(design);
            look(inputs.component());
            for (String title : results.titles()) {
              results.open(title);
              look((Container) results.tabs().getSelectedComponent());
              for (JComponent component : PanelsTest.all(results.tabs())) {
                if (component instanceof JEditorPane page) {
                  HTMLDocument html = (HTMLDocument) page.getDocument();
                  assertThat(html.getIterator(HTML.Tag.IMG).isValid()).isFalse();
                }
              }
            }
          }
          return null;
        });
    assertThat(callsSoon()).isZero();
  }

  @Test
  void theMessageOfADialogIsPlain() throws Exception {
    onEventThread(
        () -> {
          look(new JOptionPane(hostile() + " exists already. Replace it?"));
          return null;
        });
    assertThat(callsSoon()).isZero();
  }

  /** Paints everything that is shown, with every cell and the tips that hold texts of a design. */
  private static void look(Container root) {
    paint((JComponent) root);
    for (JComponent component : PanelsTest.all(root)) {
      if (!PanelsTest.isShown(component)) {
        continue;
      }
      if (component instanceof JComboBox || component instanceof JTable) {
        MouseEvent over = new MouseEvent(component, MouseEvent.MOUSE_MOVED, 0, 0, 5, 5, 0, false);
        tip(component, component.getToolTipText(over));
      }
      if (component instanceof JTable table) {
        for (int row = 0; row < table.getRowCount(); row++) {
          for (int column = 0; column < table.getColumnCount(); column++) {
            JComponent cell =
                (JComponent) table.prepareRenderer(table.getCellRenderer(row, column), row, column);
            paint(cell);
            tip(table, cell.getToolTipText());
          }
        }
      } else if (component instanceof JList<?> list) {
        paintCells(list);
      } else if (component instanceof JComboBox<?> box) {
        paintCells(new JList<>(entries(box)));
      }
    }
  }

  private static Object[] entries(JComboBox<?> box) {
    Object[] entries = new Object[box.getItemCount()];
    for (int i = 0; i < entries.length; i++) {
      entries[i] = box.getItemAt(i);
    }
    return entries;
  }

  private static <T> void paintCells(JList<T> list) {
    for (int i = 0; i < list.getModel().getSize(); i++) {
      paint(
          (JComponent)
              list.getCellRenderer()
                  .getListCellRendererComponent(
                      list, list.getModel().getElementAt(i), i, false, false));
    }
  }

  private static void tip(JComponent owner, String text) {
    if (text != null) {
      JToolTip tip = owner.createToolTip();
      tip.setTipText(text);
      paint(tip);
    }
  }

  private static void paint(JComponent component) {
    Dimension size = component.getPreferredSize();
    component.setSize(Math.max(1, size.width), Math.max(1, Math.min(4000, size.height)));
    component.doLayout();
    BufferedImage image = new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    component.printAll(g);
    g.dispose();
  }
}
