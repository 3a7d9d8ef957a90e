#include "words/message.hpp"

namespace fw::words {
namespace {

Value with_gap(const Value& value, std::string_view hidden, const std::string& gap) {
  if (const auto* list = std::get_if<Value::List>(&value.content())) {
    Value::List items;
    for (const Value& item : *list) {
      items.push_back(with_gap(item, hidden, gap));
    }
    return items;
  }
  if (said(message("{value}", {{"value", value}})) == hidden) {
    return gap;
  }
  if (const auto* inner = std::get_if<Message>(&value.content())) {
    return words::with_gap(*inner, hidden, gap);
  }
  const auto* amount = std::get_if<Amount>(&value.content());
  return amount != nullptr && amount->number == hidden ? Value(Amount{gap, amount->unit}) : value;
}

}  // namespace

Message first_sentence(const Message& message) {
  const bool is_list = message.pattern() == one_after_another({message}).pattern();
  return is_list
             ? std::get<Message>(std::get<Value::List>(message.arguments().front().value.content()).front().content())
             : message;
}

Message with_gap(const Message& message, std::string_view hidden, const std::string& gap) {
  std::vector<Argument> arguments;
  for (const Argument& argument : message.arguments()) {
    arguments.push_back({argument.name, with_gap(argument.value, hidden, gap)});
  }
  return message.with_arguments(std::move(arguments));
}

}  // namespace fw::words
