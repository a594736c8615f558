#include "viewer/sheet/handout.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>

#include "models/files/own_files.h"
#include "viewer/stage/things/surroundings.h"
#include "viewer/words/error.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr double handout_margin_mm = 18;
constexpr int handout_dots_per_inch = 300;

QString html_of(const Handout& handout) {
  const auto escaped = [](const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); };
  QString html = QStringLiteral("<p align='center' style='font-size:9pt'>%1</p>").arg(escaped(handout.whose));
  for (const PatientPage& page : handout.pages)
    html += QStringLiteral("<h2 style='font-size:17pt'>%1</h2><p style='font-size:13pt'>%2</p>")
                .arg(escaped(page.heading), escaped(page.text));
  return html + QStringLiteral("<p style='font-size:9pt'>%1</p>").arg(escaped(caution_text()));
}

}  // namespace

void paint_handout(const Handout& handout, QPagedPaintDevice& onto) {
  onto.setPageMargins(QMarginsF(handout_margin_mm, handout_margin_mm, handout_margin_mm, handout_margin_mm),
                      QPageLayout::Millimeter);
  QPainter painter(&onto);
  const QSizeF page(onto.width(), onto.height());
  QTextDocument text;
  text.documentLayout()->setPaintDevice(&onto);
  text.setDocumentMargin(0);
  text.setHtml(html_of(handout));
  text.setTextWidth(page.width());
  // The picture over the words, as large as they leave room for.
  const double room = page.height() - text.size().height();
  constexpr double least_share = 0.15;
  if (room < least_share * page.height())
    throw ViewerError(
        geometry::Message::of("The handout's words do not fit on one page; choose larger paper."));
  const QSizeF size = QSizeF(handout.picture.size()).scaled(QSizeF(page.width(), room), Qt::KeepAspectRatio);
  painter.drawImage(QRectF(QPointF(0.5 * (page.width() - size.width()), 0), size), handout.picture);
  painter.translate(0, size.height());
  text.drawContents(&painter);
}

std::string handout_pdf(const Handout& handout, Paper paper) {
  QByteArray bytes;
  QBuffer out(&bytes);
  out.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&out);
    writer.setPageSize(QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setResolution(handout_dots_per_inch);
    writer.setTitle(Words::tr("Handout"));
    writer.setCreator(QString::fromLatin1(models::own_name));
    paint_handout(handout, writer);
  }
  return bytes.toStdString();
}

}  // namespace scalpmark::viewer
