#include "models/files/csv.h"

#include <catch2/catch.hpp>

#include "models/files/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark;
using models::read_csv;
using tests::is_sentence;
using tests::sentence_of;

namespace {

std::string refusal(const std::string& text) {
  return sentence_of<models::ModelError>([&] { (void)read_csv(text, "table.csv"); });
}

}  // namespace

TEST_CASE("a table is read as RFC 4180 writes it") {
  // RFC 4180, section 2: records end in CR LF, the last may lack it; commas, quotation marks (doubled) and
  // line breaks stand in quoted cells; spaces are part of a cell.
  const auto table = read_csv("aaa,bbb,ccc\r\n\"zz,z\",\"y\"\"yy\",\"x\r\nx\"\r\n 1 ,,3", "table.csv");
  CHECK(table.columns == std::vector<std::string>{"aaa", "bbb", "ccc"});
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].cells == std::vector<std::string>{"zz,z", "y\"yy", "x\r\nx"});
  CHECK(table.rows[0].line == 2);
  CHECK(table.rows[1].cells == std::vector<std::string>{" 1 ", "", "3"});
  CHECK(table.rows[1].line == 4);  // the break inside a cell counts
}

TEST_CASE("line feeds alone, a byte order mark and blank lines do no harm") {
  const auto table = read_csv(
      "\xEF\xBB\xBF"
      "a,b\n\n1,2\n\"\",\"\"\n\n",
      "table.csv");
  CHECK(table.columns == std::vector<std::string>{"a", "b"});
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].line == 3);
  CHECK(table.rows[1].cells == std::vector<std::string>{"", ""});
}

TEST_CASE("what is no such table is refused, and its line is named") {
  struct Bad {
    std::string text, said;
  };
  for (const Bad& bad :
       std::vector<Bad>{{"", "table.csv is empty"},
                        {"\n\n", "table.csv is empty"},
                        {"a,b\n1,2\n3\n", "line 3 has 1 cells, but there are 2 columns"},
                        {"a,b\n1,2,3\n", "line 2 has 3 cells"},
                        {"a,b\n\"1,2\n3,4\n", "line 2: a quotation mark begins a cell that never ends"},
                        {"a,b\n1\"2,3\n", "line 2: a quotation mark stands inside"},
                        {"a,b\n\"1\"2,3\n", "line 2: something follows a quotation mark"},
                        {"a;b\n1;2\n", "semicolons between its columns"},
                        {"a,b,a\n1,2,3\n", "line 1: the column \"a\" is there twice"},
                        {std::string("a,b\0\n", 5), "zero bytes"},
                        {"a,b\n\xff,2\n", "not UTF-8"}}) {
    const std::string said = refusal(bad.text);
    CAPTURE(bad.text, said);
    CHECK(is_sentence(said));
    CHECK(said.find(bad.said) != std::string::npos);
  }
}

TEST_CASE("a row is written so that it reads the same") {
  const std::vector<std::string> cells{"plain", "", "with, comma", "with \"marks\"", "two\nlines", "ü"};
  const std::string row = models::csv_row(cells);
  CHECK(row == "plain,,\"with, comma\",\"with \"\"marks\"\"\",\"two\nlines\",ü\r\n");
  CHECK(read_csv("a,b,c,d,e,f\r\n" + row, "t").rows.at(0).cells == cells);
  CHECK(models::csv_row({"", "a"}) == ",a\r\n");
}
