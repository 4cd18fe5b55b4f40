package io.frostlot.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a CSV file (RFC 4180) as its Table Schema describes it: comma, semicolon or tab between
 * cells, decimal point or, where the comma is not the separator, decimal comma.
 */
final class TableReader {
  private static final int MOST_ROWS = 20_000;
  private final TableSchema schema;
  private final String file;
  private final Problems problems;

  /**
   * A reader for one file.
   *
   * @param file name in messages
   */
  TableReader(TableSchema schema, String file, Problems problems) {
    this.schema = schema;
    this.file = file;
    this.problems = problems;
  }

  /** The table; no rows, and no complaint, where there is no such file. */
  Table readIfThere(Path path) {
    return TextFile.isThere(path) ? read(path) : Table.NONE;
  }

  Table read(Path path) {
    int before = problems.count();
    List<Row> rows =
        TextFile.read(path, file, problems)
            .map(text -> rows(text, separator(text)))
            .orElse(List.of());
    return new Table(rows, problems.count() == before);
  }

  private List<Row> rows(String text, char separator) {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreEmptyLines(false).get();
    List<Row> rows = new ArrayList<>();
    Where where = line(1);
    try (CSVParser parser = CSVParser.parse(text, format)) {
      Iterator<CSVRecord> records = parser.iterator();
      List<String> header = next(records);
      while (header.stream().allMatch(String::isBlank) && records.hasNext()) {
        where = line(parser.getCurrentLineNumber() + 1);
        header = next(records);
      }
      Optional<RowReader> reader = new Header(schema, where, problems).read(header, separator);
      where = line(parser.getCurrentLineNumber() + 1);
      while (reader.isPresent() && records.hasNext()) {
        List<String> cells = next(records);
        if (rows.size() == MOST_ROWS) {
          problems.add(new Problem(where, "more rows", "at most " + MOST_ROWS, ""));
          break;
        }
        reader.get().read(cells, where).ifPresent(rows::add);
        where = line(parser.getCurrentLineNumber() + 1);
      }
    } catch (IOException | UncheckedIOException e) {
      problems.add(
          new Problem(
              where,
              "quotes that do not pair",
              "a cell in quotes to be closed before the next",
              "A quote inside a quoted cell is typed twice."));
    }
    return rows;
  }

  private static List<String> next(Iterator<CSVRecord> records) {
    return records.next().stream().map(String::strip).toList();
  }

  private Where line(long line) {
    return new Where(file, (int) line, "");
  }

  /** The first of the three in the header line, whose column names hold none of them. */
  private static char separator(String text) {
    String header = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    return header.indexOf(';') >= 0 ? ';' : header.indexOf('\t') >= 0 ? '\t' : ',';
  }
}
