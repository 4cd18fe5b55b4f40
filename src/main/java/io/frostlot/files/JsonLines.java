package io.frostlot.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import io.frostlot.plan.Payment;
import io.frostlot.units.Money;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Writes indented JSON into memory, field by field; lines end with a line feed on every system. */
final class JsonLines {
  private static final JsonFactory FACTORY = new JsonFactory();
  private final JsonGenerator json;

  private JsonLines(JsonGenerator json) {
    this.json = json;
  }

  /** One object as a document. */
  static String document(Consumer<JsonLines> fields) {
    StringWriter text = new StringWriter();
    DefaultPrettyPrinter indented =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
    indented.indentArraysWith(new DefaultIndenter("  ", "\n"));
    indented.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.setPrettyPrinter(indented);
      json.writeStartObject();
      fields.accept(new JsonLines(json));
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  private interface Step {
    void run() throws IOException;
  }

  private JsonLines then(Step step) {
    try {
      step.run();
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  JsonLines text(String name, String value) {
    return then(() -> json.writeStringField(name, value));
  }

  JsonLines day(String name, LocalDate day) {
    return text(name, day.toString());
  }

  JsonLines number(String name, long value) {
    return then(() -> json.writeNumberField(name, value));
  }

  JsonLines number(String name, BigDecimal value) {
    return then(
        () -> {
          json.writeFieldName(name);
          json.writeNumber(value.toPlainString());
        });
  }

  JsonLines yes(String name, boolean value) {
    return then(() -> json.writeBooleanField(name, value));
  }

  JsonLines nothing(String name) {
    return then(() -> json.writeNullField(name));
  }

  JsonLines object(String name, Consumer<JsonLines> fields) {
    return then(
        () -> {
          json.writeObjectFieldStart(name);
          fields.accept(this);
          json.writeEndObject();
        });
  }

  /** A list of objects. */
  <T> JsonLines list(
      String name, Iterable<T> items, java.util.function.BiConsumer<JsonLines, T> fields) {
    return then(
        () -> {
          json.writeArrayFieldStart(name);
          for (T item : items) {
            json.writeStartObject();
            fields.accept(this, item);
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  /** Who pays whom, in a list of that name. */
  JsonLines payments(List<Payment> payments, Function<Money, String> amount) {
    return list(
        "payments",
        payments,
        (line, payment) ->
            line.text("from", payment.from())
                .text("to", payment.to())
                .text("amount", amount.apply(payment.amount())));
  }

  JsonLines texts(String name, Iterable<String> texts) {
    return then(
        () -> {
          json.writeArrayFieldStart(name);
          for (String text : texts) {
            json.writeString(text);
          }
          json.writeEndArray();
        });
  }
}
