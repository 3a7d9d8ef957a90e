#pragma once

#include "ui/items.hpp"

// The constant identities of the widgets: what they are called on the screen may change, these may not.
namespace fw::panels::ids {

using ui::WidgetId;

inline constexpr WidgetId modes{"modes"};
inline constexpr WidgetId side_tabs{"side_tabs"};
inline constexpr WidgetId problem{"problem"};
inline constexpr WidgetId problem_before{"problem_before"};
inline constexpr WidgetId problem_next{"problem_next"};
inline constexpr WidgetId rail{"rail"};
inline constexpr WidgetId rail_toggle{"rail_toggle"};
inline constexpr WidgetId present{"present"};
inline constexpr WidgetId close_file_news{"close_file_news"};
inline constexpr WidgetId more_file_news{"more_file_news"};
inline constexpr WidgetId prompt_toggle{"prompt_toggle"};

inline constexpr WidgetId bench{"bench"};
inline constexpr WidgetId turn_left{"turn_left"};
inline constexpr WidgetId turn_right{"turn_right"};
inline constexpr WidgetId tilt_up{"tilt_up"};
inline constexpr WidgetId tilt_down{"tilt_down"};
inline constexpr WidgetId zoom_in{"zoom_in"};
inline constexpr WidgetId zoom_out{"zoom_out"};
inline constexpr WidgetId fit{"fit"};

inline constexpr WidgetId fold_close{"fold_close"};
inline constexpr WidgetId fold_open{"fold_open"};
inline constexpr WidgetId fold_slider{"fold_slider"};
inline constexpr WidgetId fold_play{"fold_play"};
inline constexpr WidgetId fold_order{"fold_order"};
inline constexpr WidgetId net_before{"net_before"};
inline constexpr WidgetId net_next{"net_next"};

inline constexpr WidgetId card_close{"card_close"};
inline constexpr WidgetId card_count{"card_count"};
inline constexpr WidgetId card_move{"card_move"};

inline constexpr WidgetId ledger_rows{"ledger_rows"};
inline constexpr WidgetId ledger_row{"ledger_row"};
inline constexpr WidgetId lesson_on{"lesson_on"};
inline constexpr WidgetId lesson_back{"lesson_back"};
inline constexpr WidgetId clear_count{"clear_count"};
inline constexpr WidgetId grouping{"grouping"};
inline constexpr WidgetId show_total{"show_total"};
inline constexpr WidgetId show_volume{"show_volume"};

inline constexpr WidgetId measure_rows{"measure_rows"};
inline constexpr WidgetId measure_field{"measure_field"};
inline constexpr WidgetId measure_less{"measure_less"};
inline constexpr WidgetId measure_more{"measure_more"};
inline constexpr WidgetId measure_slider{"measure_slider"};
inline constexpr WidgetId unit{"unit"};
inline constexpr WidgetId undo{"undo"};
inline constexpr WidgetId redo{"redo"};
inline constexpr WidgetId reset{"reset"};
inline constexpr WidgetId take_remedy{"take_remedy"};
inline constexpr WidgetId dismiss_notice{"dismiss_notice"};

inline constexpr WidgetId shelf{"shelf"};
inline constexpr WidgetId shelf_item{"shelf_item"};

inline constexpr WidgetId display_rows{"display_rows"};
inline constexpr WidgetId theme{"theme"};
inline constexpr WidgetId reduced_motion{"reduced_motion"};
inline constexpr WidgetId play_speed{"play_speed"};
inline constexpr WidgetId letter_keys{"letter_keys"};
inline constexpr WidgetId hidden_numbers{"hidden_numbers"};
inline constexpr WidgetId full_screen{"full_screen"};
inline constexpr WidgetId blank{"blank"};
inline constexpr WidgetId show_keys{"show_keys"};

inline constexpr WidgetId work_tabs{"work_tabs"};
inline constexpr WidgetId work_asked{"work_asked"};
inline constexpr WidgetId work_list{"work_list"};
inline constexpr WidgetId work_step{"work_step"};
inline constexpr WidgetId work_number{"work_number"};
inline constexpr WidgetId work_back{"work_back"};
inline constexpr WidgetId work_forward{"work_forward"};
inline constexpr WidgetId work_origin{"work_origin"};
inline constexpr WidgetId work_all{"work_all"};
inline constexpr WidgetId work_gap{"work_gap"};
inline constexpr WidgetId work_field{"work_field"};
inline constexpr WidgetId work_enter{"work_enter"};
inline constexpr WidgetId work_undo{"work_undo"};
inline constexpr WidgetId work_redo{"work_redo"};
inline constexpr WidgetId decision{"decision"};
inline constexpr WidgetId ask_rows{"ask_rows"};
inline constexpr WidgetId ask_measure{"ask_measure"};
inline constexpr WidgetId missing_rows{"missing_rows"};
inline constexpr WidgetId decision_rows{"decision_rows"};
inline constexpr WidgetId ask_lesson{"ask_lesson"};
inline constexpr WidgetId give_measure{"give_measure"};
inline constexpr WidgetId work_detail{"work_detail"};
inline constexpr WidgetId work_line{"work_line"};
inline constexpr WidgetId work_line_number{"work_line_number"};
inline constexpr WidgetId work_option_rows{"work_option_rows"};
inline constexpr WidgetId work_notation{"work_notation"};
inline constexpr WidgetId work_options{"work_options"};
inline constexpr WidgetId work_route{"work_route"};
inline constexpr WidgetId work_fade{"work_fade"};

inline constexpr WidgetId quiz_who{"quiz_who"};
inline constexpr WidgetId quiz_source{"quiz_source"};
inline constexpr WidgetId quiz_level{"quiz_level"};
inline constexpr WidgetId quiz_types{"quiz_types"};
inline constexpr WidgetId quiz_mixed{"quiz_mixed"};
inline constexpr WidgetId quiz_type{"quiz_type"};
inline constexpr WidgetId quiz_numbers{"quiz_numbers"};
inline constexpr WidgetId quiz_about{"quiz_about"};
inline constexpr WidgetId quiz_start{"quiz_start"};
inline constexpr WidgetId quiz_end{"quiz_end"};
inline constexpr WidgetId item_before{"item_before"};
inline constexpr WidgetId item_next{"item_next"};
inline constexpr WidgetId item_page{"item_page"};
inline constexpr WidgetId item_help{"item_help"};
inline constexpr WidgetId item_reply{"item_reply"};
inline constexpr WidgetId item_undo{"item_undo"};
inline constexpr WidgetId item_redo{"item_redo"};
inline constexpr WidgetId answer_style{"answer_style"};
inline constexpr WidgetId answer_field{"answer_field"};
inline constexpr WidgetId answer_enter{"answer_enter"};
inline constexpr WidgetId answer_option{"answer_option"};
inline constexpr WidgetId answer_before{"answer_before"};
inline constexpr WidgetId reveal{"reveal"};
inline constexpr WidgetId hint{"hint"};
inline constexpr WidgetId try_again{"try_again"};
inline constexpr WidgetId results{"results"};
inline constexpr WidgetId missed_again{"missed_again"};
inline constexpr WidgetId results_close{"results_close"};
inline constexpr WidgetId go_on{"go_on"};
inline constexpr WidgetId class_back{"class_back"};
inline constexpr WidgetId class_option{"class_option"};
inline constexpr WidgetId hands{"hands"};
inline constexpr WidgetId hands_less{"hands_less"};
inline constexpr WidgetId hands_more{"hands_more"};

inline constexpr WidgetId keys_sheet{"keys_sheet"};
inline constexpr WidgetId keys_close{"keys_close"};
inline constexpr WidgetId blank_sheet{"blank_sheet"};

inline constexpr WidgetId show_print{"show_print"};
inline constexpr WidgetId print_sheet{"print_sheet"};
inline constexpr WidgetId print_close{"print_close"};
inline constexpr WidgetId print_choices{"print_choices"};
inline constexpr WidgetId print_kind{"print_kind"};
inline constexpr WidgetId print_kind_more{"print_kind_more"};
inline constexpr WidgetId print_less{"print_less"};
inline constexpr WidgetId print_more{"print_more"};
inline constexpr WidgetId print_place{"print_place"};
inline constexpr WidgetId print_news{"print_news"};
inline constexpr WidgetId print_save{"print_save"};
inline constexpr WidgetId print_share{"print_share"};
inline constexpr WidgetId print_stop{"print_stop"};
inline constexpr WidgetId print_again{"print_again"};
inline constexpr WidgetId page_before{"page_before"};
inline constexpr WidgetId page_next{"page_next"};

inline constexpr WidgetId show_progress{"show_progress"};
inline constexpr WidgetId quiz_progress{"quiz_progress"};
inline constexpr WidgetId progress_sheet{"progress_sheet"};
inline constexpr WidgetId progress_rows{"progress_rows"};
inline constexpr WidgetId progress_close{"progress_close"};
inline constexpr WidgetId progress_export{"progress_export"};
inline constexpr WidgetId progress_erase{"progress_erase"};
inline constexpr WidgetId progress_sure{"progress_sure"};
inline constexpr WidgetId progress_keep{"progress_keep"};

}  // namespace fw::panels::ids
