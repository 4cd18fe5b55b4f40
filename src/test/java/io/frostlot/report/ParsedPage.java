package io.frostlot.report;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A page as the XML parser of the platform reads it, which takes nothing that is not well-formed.
 */
public record ParsedPage(Document document) {

  public static ParsedPage of(String html) {
    try {
      return new ParsedPage(
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(html))));
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError(html, e);
    }
  }

  /** Text of each node that an XPath finds. */
  public List<String> all(String path) {
    try {
      NodeList nodes =
          (NodeList)
              XPathFactory.newInstance()
                  .newXPath()
                  .evaluate(path, document, XPathConstants.NODESET);
      List<String> all = new ArrayList<>();
      for (int i = 0; i < nodes.getLength(); i++) {
        all.add(nodes.item(i).getTextContent());
      }
      return all;
    } catch (XPathExpressionException e) {
      throw new AssertionError(path, e);
    }
  }

  /** What it says, word by word. */
  public List<String> words() {
    return words(String.join(" ", all("//body//text()")));
  }

  /** Without what is there for the looks of it: dots, rules, marks, capitals. */
  public static List<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(word -> !word.isEmpty())
        .toList();
  }
}
