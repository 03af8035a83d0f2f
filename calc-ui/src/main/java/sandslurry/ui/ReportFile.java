package sandslurry.ui;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import java.awt.Dimension;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.w3c.dom.Document;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.report.DesignReport;
import sandslurry.report.TitleBlock;
import sandslurry.report.block.Block;
import sandslurry.report.block.HtmlBody;
import sandslurry.study.Cures;
import sandslurry.units.UnitSystem;

/**
 * A report as a file: one page of HTML that needs nothing beside it, or a PDF with bookmarks and
 * page numbers. Both are the same markup; the pages are laid out by a library. The same report of
 * the same date gives the same bytes.
 */
record ReportFile(
    List<Block> blocks, ReportDrawings drawings, String title, UnitSystem units, LocalDate date) {
  /** It tells of each font of its list that a machine lacks, to people who wait for a report. */
  private static final Logger PAGES = Logger.getLogger("org.apache.pdfbox");

  private static final String DRAWING = "application/x-drawing";

  /** Points of a drawing's unit: charts are drawn for a screen and go smaller on paper. */
  private static final double POINTS = 0.5;

  /** Those of a drawing as wide as the page. */
  private static final double WIDE_POINTS = 0.55;

  private static final double WIDEST_PT = 505;
  private static final double HIGHEST_PT = 670;

  /**
   * The design report of a design, the same from the form and from the command line.
   *
   * @param cures the changes that mend its first finding, where they were looked for
   * @param file name of the design file; empty when it has none
   */
  static ReportFile of(
      DesignDocument document,
      Assessment assessment,
      Optional<Cures> cures,
      String file,
      LocalDate date,
      boolean working) {
    TitleBlock title =
        new TitleBlock(file, date.toString(), Product.NAME + ", " + Product.version());
    List<Block> blocks = new ArrayList<>(DesignReport.of(document, assessment, cures, title));
    if (working) {
      blocks.addAll(DesignReport.working(assessment));
    }
    return new ReportFile(
        blocks,
        new ReportDrawings(assessment),
        assessment.design().title(),
        assessment.design().units(),
        date);
  }

  /** The report in the form that the name of its file asks for. */
  byte[] as(Path path) throws BadInputException {
    String name = path.toString().toLowerCase(Locale.ROOT);
    try {
      if (name.endsWith(".pdf")) {
        return pdf();
      }
      if (name.endsWith(".html") || name.endsWith(".htm")) {
        return html().getBytes(StandardCharsets.UTF_8);
      }
    } catch (IOException e) {
      throw new BadInputException(
          "The report cannot be written to " + path + ": " + BadInputException.reason(e));
    }
    throw new BadInputException(
        "The design report needs a file whose name ends with .pdf or .html, not " + path);
  }

  /** One file of HTML, dark and light, that prints as well. */
  String html() throws IOException {
    String body = new HtmlBody(new Inline()).write(blocks);
    return "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/>"
        + "<meta name=\"viewport\" content=\"width=device-width\"/><title>"
        + HtmlBody.escape(title)
        + "</title>\n<style>\n"
        + css("report.css")
        + css("report-screen.css")
        + "</style></head>\n<body>\n"
        + body
        + "</body></html>\n";
  }

  byte[] pdf() throws IOException {
    try (PDDocument document = document();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      document.save(out);
      return out.toByteArray();
    }
  }

  /** A PDF on the paper of the country: letter for US units, A4 for metric ones. */
  PDDocument document() throws IOException {
    XRLog.setLoggingEnabled(false);
    PAGES.setLevel(Level.SEVERE);
    Map<String, ReportDrawings.Drawing> placed = new HashMap<>();
    String body = new HtmlBody(new Placed(placed)).write(blocks);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withHtmlContent(page(body), null);
    if (units == UnitSystem.US) {
      builder.useDefaultPageSize(8.5f, 11f, PageSizeUnits.INCHES);
    } else {
      builder.useDefaultPageSize(210f, 297f, PageSizeUnits.MM);
    }
    DefaultObjectDrawerFactory factory = new DefaultObjectDrawerFactory();
    factory.registerDrawer(DRAWING, drawer(placed));
    builder.useObjectDrawerFactory(factory);
    builder.withProducer(Product.NAME);
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.layout();
      renderer.createPDFWithoutClosing();
      PDDocument document = renderer.getPdfDocument();
      describe(document, body);
      return document;
    }
  }

  private String page(String body) throws IOException {
    StringBuilder bookmarks = new StringBuilder("<bookmarks>");
    List<String> chapters = HtmlBody.chapters(blocks);
    for (int i = 0; i < chapters.size(); i++) {
      bookmarks
          .append("<bookmark name=\"")
          .append(HtmlBody.escape(chapters.get(i)))
          .append("\" href=\"#chapter")
          .append(i + 1)
          .append("\"/>");
    }
    return "<html><head><title>"
        + HtmlBody.escape(title)
        + "</title><style>"
        + css("report.css")
        + css("report-pages.css")
        + "</style>"
        + bookmarks.append("</bookmarks>")
        + "</head><body>"
        + body
        + "</body></html>";
  }

  /** The date of the report and not that of the clock, so that the bytes repeat. */
  private void describe(PDDocument document, String body) {
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(title);
    information.setCreator(Product.NAME + " " + Product.version());
    Calendar day = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
    day.setTimeZone(TimeZone.getTimeZone(ZoneOffset.UTC));
    information.setCreationDate(day);
    information.setModificationDate(day);
    document.setDocumentInformation(information);
    document.getDocument().getTrailer().removeItem(COSName.ID);
    document.setDocumentId((long) Arrays.hashCode(body.getBytes(StandardCharsets.UTF_8)));
  }

  private static FSObjectDrawer drawer(Map<String, ReportDrawings.Drawing> placed) {
    return (element, x, y, width, height, device, context, dotsPerPixel) -> {
      ReportDrawings.Drawing drawing = placed.get(element.getAttribute("data"));
      device.drawWithGraphics(
          (float) x,
          (float) y,
          (float) width / dotsPerPixel,
          (float) height / dotsPerPixel,
          g -> {
            double scale = width / dotsPerPixel / drawing.width();
            g.scale(scale, scale);
            drawing.painter().paint(g);
          });
      return null;
    };
  }

  private static String css(String name) throws IOException {
    try (InputStream in = ReportFile.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Drawings as vector graphics inside the page of HTML. */
  private final class Inline implements HtmlBody.Drawings {
    @Override
    public String picture(Block.Picture picture) {
      return drawings.drawing(picture.id()).map(d -> svg(picture.id(), d)).orElse("");
    }

    @Override
    public String window(Block.Window window) {
      return svg("window", ReportDrawings.window(window));
    }

    private String svg(String id, ReportDrawings.Drawing drawing) {
      try {
        Document document =
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .getDOMImplementation()
                .createDocument("http://www.w3.org/2000/svg", "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("a drawing of the report");
        context.setPrecision(2);
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension(drawing.width(), drawing.height()));
        drawing.painter().paint(graphics);
        StringWriter out = new StringWriter();
        graphics.stream(out, true);
        String text = out.toString();
        // Names inside a drawing must differ from those of the other drawings of the page.
        return text.substring(text.indexOf("<svg"))
            .replace("id=\"", "id=\"" + id + "-")
            .replace("url(#", "url(#" + id + "-")
            .replaceFirst(
                "<svg",
                String.format(
                    Locale.ROOT, "<svg viewBox=\"0 0 %d %d\"", drawing.width(), drawing.height()));
      } catch (ParserConfigurationException | IOException e) {
        throw new IllegalStateException("a drawing could not be written", e);
      }
    }
  }

  /** Drawings as places in the page that are painted when it is laid out. */
  private final class Placed implements HtmlBody.Drawings {
    private final Map<String, ReportDrawings.Drawing> placed;

    Placed(Map<String, ReportDrawings.Drawing> placed) {
      this.placed = placed;
    }

    @Override
    public String picture(Block.Picture picture) {
      return place(picture.id(), drawings.drawing(picture.id()));
    }

    @Override
    public String window(Block.Window window) {
      return place("window", Optional.of(ReportDrawings.window(window)));
    }

    private String place(String id, Optional<ReportDrawings.Drawing> drawing) {
      if (drawing.isEmpty()) {
        return "";
      }
      ReportDrawings.Drawing it = drawing.get();
      placed.put(id, it);
      double scale =
          Math.min(
              id.equals("plant") ? WIDE_POINTS : POINTS,
              Math.min(WIDEST_PT / it.width(), HIGHEST_PT / it.height()));
      return String.format(
          Locale.ROOT,
          "<object type=\"%s\" data=\"%s\" style=\"width:%.1fpt;height:%.1fpt\"></object>",
          DRAWING,
          id,
          it.width() * scale,
          it.height() * scale);
    }
  }
}
