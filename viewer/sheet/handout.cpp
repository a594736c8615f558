#include "viewer/sheet/handout.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>
#include <QUrl>
#include <algorithm>

#include "models/files/own_files.h"
#include "viewer/stage/things/surroundings.h"
#include "viewer/words/error.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr double handout_margin_mm = 18;
constexpr int handout_dots_per_inch = 300;

QString html_of(const Handout& handout, double picture_height) {
  const double shape = handout.picture.height() > 0
                           ? static_cast<double>(handout.picture.width()) / handout.picture.height()
                           : 1;
  QString html = QStringLiteral("<p align='center'><img src='picture' height='%1' width='%2'></p>")
                     .arg(static_cast<int>(picture_height))
                     .arg(static_cast<int>(picture_height * shape));
  const auto escaped = [](const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); };
  html += QStringLiteral("<p align='center' style='font-size:9pt'>%1</p>").arg(escaped(handout.whose));
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
  const QRectF page(0, 0, onto.width(), onto.height());
  QTextDocument text;
  text.documentLayout()->setPaintDevice(&onto);
  text.setDocumentMargin(0);
  text.setPageSize(page.size());
  text.addResource(QTextDocument::ImageResource, QUrl(QStringLiteral("picture")), handout.picture);
  // As large as the words leave room for.
  for (const double share : {0.45, 0.38, 0.32, 0.26, 0.2}) {
    text.setHtml(html_of(handout, share * page.height()));
    if (text.pageCount() == 1) {
      text.drawContents(&painter, page);
      return;
    }
  }
  throw ViewerError(
      geometry::Message::of("The handout's words do not fit on one page; choose larger paper."));
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
