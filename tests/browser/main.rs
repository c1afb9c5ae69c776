//! What a knitter meets, in real browsers, on the page as it is shipped.
//!
//! Each scenario is written once, as an async function over a [`stage::Stage`], and played in Chromium, Firefox and
//! WebKitGTK. A test stands on a port, a profile, a driver and a display of its own and ends them by their ids; only Firefox
//! is used again (`idle.rs`). The environment names the page: `LOOPWRIGHT_DIST` (a folder), `LOOPWRIGHT_FILE` (the single
//! file), `LOOPWRIGHT_AXE` (axe-core's script; without it that part is left out and said so).

mod broken;
mod browser;
mod carry;
mod cast_on;
mod channel;
mod cords;
mod differences;
mod edition;
mod embed;
mod fields;
mod flare;
mod folder;
mod frozen;
mod gallery;
mod gauge;
mod guest;
mod heights;
mod home;
mod idle;
mod job;
mod keep;
mod keyboard;
mod knit;
mod large_text;
mod link;
mod measures;
mod needles;
mod needs;
mod next;
mod notes;
mod one_file;
mod panel;
mod paper;
mod pattern;
mod policy;
mod power;
mod print;
mod project;
mod raglan;
mod regauge;
mod rows;
mod server;
mod shaping;
mod shared;
mod sizing;
mod snapshot;
mod stage;
mod stairs;
mod start;
mod states;
mod steps;
mod still;
mod storage;
mod strange;
mod strangers;
mod swatch;
mod tail;
mod tracks;
mod units;
mod update;
mod visible;
mod windows;
mod written;
mod yarn;
mod yoke;

/// Each scenario of a group as a test in the module of its browser; set aside where that browser cannot play it.
macro_rules! played {
    ($engine:ident plays $($scenes:ident :: $scenario:ident,)*) => {
        $(#[test]
        fn $scenario() {
            played!(run $engine $scenes $scenario);
        })*
    };
    ($engine:ident $why:literal $($scenes:ident :: $scenario:ident,)*) => {
        $(#[test]
        #[ignore = $why]
        fn $scenario() {
            played!(run $engine $scenes $scenario);
        })*
    };
    (run $engine:ident $scenes:ident $scenario:ident) => {
        crate::stage::play(
            crate::browser::Engine::$engine,
            stringify!($scenes),
            stringify!($scenario),
            crate::$scenes::$scenario,
        )
    };
}

/// Why a group is not played, or nothing.
macro_rules! reason {
    (plays) => {
        None
    };
    ($why:literal) => {
        Some($why)
    };
}

/// All scenarios, in groups that are played in the same browsers: every one in Chromium, and in the others where it says
/// `plays` and not why not.
macro_rules! scenarios {
    ($(firefox: $firefox:tt, webkit: $webkit:tt, { $($scenes:ident :: $scenario:ident,)* })*) => {
        mod chromium { $(played!(Chromium plays $($scenes::$scenario,)*);)* }
        mod firefox { $(played!(Firefox $firefox $($scenes::$scenario,)*);)* }
        mod webkit { $(played!(WebKit $webkit $($scenes::$scenario,)*);)* }

        /// The list, to be told.
        const SCENARIOS: &[differences::Group] = &[$(differences::Group {
            firefox: reason!($firefox),
            webkit: reason!($webkit),
            names: &[$(concat!(stringify!($scenes), "::", stringify!($scenario)),)*],
        },)*];
    };
}

scenarios! {
    firefox: plays, webkit: plays, {
        job::she_types_two_numbers_and_knits_the_row_she_reads,
        job::a_flat_row_leans_both_ways,
        job::she_gains_stitches,
        job::she_ends_on_a_multiple,
        job::a_hundred_thousand_stitches_are_no_trouble,
        gauge::she_counts_several_spots_and_goes_up_a_needle,
        gauge::she_swatches_in_inches_and_four_inches_stay_four,
        gauge::she_knits_what_is_right_after_washing,
        swatch::she_casts_on_a_swatch_with_room_round_its_middle,
        swatch::she_plans_a_swatch_in_inches,
        sizing::she_finds_her_size_among_finished_measures,
        sizing::a_list_of_bodies_is_met_with_the_body,
        sizing::two_rows_and_two_lists_are_read_as_they_stand,
        sizing::no_number_of_a_printed_list_is_dropped,
        sizing::she_finds_her_size_in_inches,
        sizing::her_own_gauge_picks_another_size,
        sizing::she_takes_a_standard_list,
        pattern::her_size_is_marked_and_nothing_of_the_text_is_stored,
        pattern::a_doubt_is_decided_and_kept_when_she_says_so,
        pattern::another_size_from_a_line_on_is_copied_as_plain_text,
        regauge::she_brings_a_pattern_to_her_gauge,
        regauge::she_converts_between_inches_and_centimetres,
        regauge::she_shapes_at_her_gauge,
        cast_on::she_casts_on_the_width_she_wants,
        cast_on::she_casts_on_in_inches,
        cast_on::she_counts_by_taps_while_casting_on,
        needles::she_finds_her_needle_and_takes_it_along,
        needles::a_number_may_be_two_needles_or_none,
        cords::she_changes_cords_as_her_yoke_grows,
        cords::she_shrinks_a_crown_in_inches,
        cords::a_washed_gauge_is_taken_with_a_caution,
        cords::she_types_the_steps_of_her_yoke,
        written::she_reads_where_a_line_runs_out,
        written::she_works_every_size_and_names_a_stitch,
        written::her_lines_are_kept_only_where_she_says_so,
        tail::she_takes_her_count_along_to_the_tail,
        tail::she_leaves_a_tail_in_yards,
        tail::she_asks_whether_the_tail_will_do,
        shaping::she_loses_stitches_over_many_rows,
        shaping::she_widens_a_sleeve,
        shaping::she_is_told_what_the_rows_can_take,
        stairs::she_binds_off_a_shoulder,
        stairs::she_rounds_a_neck_and_turns,
        stairs::she_raises_the_back_of_her_yoke,
        flare::she_flares_a_cape_with_the_gauge_she_keeps,
        flare::she_flares_in_inches,
        yoke::she_shapes_a_yoke_in_four_rounds,
        raglan::she_shapes_a_raglan_to_two_targets,
        rows::she_works_as_many_rows_as_her_length_takes,
        rows::she_counts_ridges_in_inches,
        rows::she_holds_a_tape_to_her_knitting,
        measures::a_needle_is_typed_as_it_is_called,
        measures::a_number_alone_may_be_a_us_needle,
        measures::a_number_in_doubt_is_asked_about,
        measures::what_was_left_in_the_wrong_unit_is_a_tap_away,
        measures::a_label_fills_stitches_and_rows,
        keep::a_reload_keeps_what_she_typed,
        keep::without_a_network_the_page_opens_and_computes,
        keep::a_folder_of_a_host_will_do,
        keep::nothing_leaves_the_page_while_she_works,
        update::a_new_version_asks_and_loses_nothing,
        update::an_untouched_page_renews_itself_once,
        update::another_window_is_not_pulled_along,
        update::a_release_with_plain_names_goes_on_and_is_followed,
        update::a_broken_update_changes_nothing,
        update::only_the_pages_own_address_is_asked_for_a_newer_version,
        broken::a_first_visit_that_breaks_says_so,
        broken::an_app_that_stops_shows_what_she_typed,
        start::a_page_without_its_script_says_what_to_do,
        start::a_page_whose_scripts_are_forbidden_says_what_to_do,
        start::without_a_network_a_deeper_address_opens_the_page,
        start::an_error_in_the_glue_shows_what_is_stored,
        strange::no_quoted_text_is_wider_than_a_phone,
        start::a_page_in_one_file_says_what_is_so_of_a_file,
        fields::nothing_she_types_is_changed_or_answered_wrongly,
        fields::the_nearest_numbers_are_a_tap_away,
        fields::a_choice_made_by_hand_shows_what_counts,
        next::a_count_is_carried_from_tool_to_tool,
        next::what_lay_there_can_be_put_back,
        next::a_yoke_goes_to_the_cords,
        project::the_example_moves_with_her_gauge,
        project::a_chain_is_made_in_a_few_taps,
        project::a_field_follows_the_project_until_something_is_tried,
        project::a_link_is_answered_as_it_was_sent,
        project::a_step_taken_out_leaves_its_text_and_comes_back,
        project::each_project_has_its_own_facts,
        project::counts_are_known_by_name,
        project::a_count_has_a_name_of_her_own,
        project::a_fact_that_cannot_be_read_is_said,
        knit::a_yoke_is_followed_by_keys_alone,
        knit::a_yoke_is_followed_by_taps_alone,
        knit::two_taps_in_a_moment_count_and_are_marked,
        knit::one_hand_reaches_all_that_is_done_often,
        knit::the_screen_is_said_to_stay_awake_only_when_it_does,
        keyboard::the_job_is_done_by_keys_alone,
        keyboard::every_control_is_reached_and_seen,
        keyboard::the_menu_can_be_skipped,
        frozen::a_log_from_before_opens_as_it_was_left,
        frozen::links_from_before_open_as_they_did,
        link::a_link_brings_its_fields_and_takes_nothing_away,
        link::a_copied_link_opens_to_the_same,
        link::an_address_without_a_page_says_so,
        strange::a_unit_in_a_link_is_read_or_said,
        strange::a_choice_that_is_none_is_said_and_kept,
        strange::what_a_link_says_in_vain_is_counted,
        strange::a_copy_that_is_not_ours_is_refused,
        strange::a_silent_clipboard_is_said_after_a_second,
        strange::every_nonsense_address_is_a_page_with_a_sentence,
        strange::the_page_about_links_lists_every_tool,
        tracks::two_shapings_at_once_are_added_up,
        tracks::the_whole_piece_is_added_up,
        tracks::parts_move_with_their_steps,
        carry::a_class_scans_the_sum_from_the_screen,
        carry::a_project_goes_out_and_comes_in,
        carry::a_hostile_link_gets_its_sentence_and_changes_nothing,
        carry::a_hostile_file_gets_its_sentence_and_changes_nothing,
        carry::a_later_versions_project_is_looked_at_and_kept_in_part,
        carry::what_was_brought_in_is_undone_after_a_reload_too,
        carry::a_project_too_long_for_a_picture_says_so,
        storage::a_newer_version_in_another_window_is_given_way_to,
        storage::a_storage_cleared_from_another_window_takes_nothing_away,
        storage::a_disc_that_was_full_is_not_trusted_until_a_copy_is_saved,
        storage::whatever_is_stored_the_page_opens,
        windows::a_field_that_is_typed_in_is_never_overwritten,
        guest::the_single_file_computes,
        one_file::she_takes_the_workbox_along_as_one_file,
        one_file::a_workbox_in_one_file_gives_a_copy_and_takes_it,
        guest::inside_another_page_it_is_a_guest,
        panel::her_lines_make_a_frame,
        panel::her_lines_make_an_element,
        panel::what_she_chooses_is_kept,
        panel::hostile_accents_are_refused,
        panel::what_a_frame_does_not_know_is_said,
        panel::a_frame_opened_by_itself_keeps_nothing,
        panel::an_address_is_checked,
        panel::copying_says_what_came_of_it,
        panel::the_preview_follows_what_she_chooses,
        embed::a_lesson_computes_in_three_elements,
        embed::a_lesson_computes_without_a_script_of_its_own,
        embed::a_lesson_computes_in_frames_kept_apart,
        embed::a_frame_kept_apart_says_which_header_is_missing,
        embed::a_frame_kept_apart_says_what_a_header_forbids,
        policy::the_page_loads_from_its_own_address_only,
        policy::text_becomes_a_script_nowhere,
        policy::an_element_computes_on_a_page_that_trusts_no_text,
        shared::frames_keep_one_program_for_each_other,
        shared::a_frame_does_not_wait_for_another_for_ever,
        channel::a_page_hears_answers_and_asks,
        channel::attributes_are_followed,
        channel::every_tool_tells_what_it_draws,
        strangers::nothing_that_is_put_into_a_frame_runs,
        strangers::nothing_is_said_to_a_stranger,
        strangers::an_element_takes_figures_and_text_only,
        yarn::she_types_her_scarf_and_reads_the_balls,
        yarn::she_measures_with_a_tape,
        yarn::she_measures_the_piece_itself,
        yarn::a_rib_gauge_is_refused_and_a_weighed_swatch_taken,
        yarn::a_patterns_balls_become_her_own,
        units::switching_the_unit_back_brings_her_text_back,
        gallery::every_state_fits_a_tablet_by_day,
        home::she_finds_a_tool_by_her_own_words,
        home::what_is_not_found_is_said,
        home::what_she_used_last_comes_first,
        home::she_chooses_inches_once,
        large_text::every_tool_can_be_read_with_type_twice_as_large,
        print::folds_open_before_printing_and_fold_again,
        still::half_a_number_leaves_the_answer,
        still::a_fold_tells_what_is_set_in_it,
        still::a_link_is_never_seen_empty,
        still::every_tool_holds_still_on_a_tablet,
        still::every_tool_holds_still_on_a_phone,
    }
    firefox: plays, webkit: plays, {
        start::a_page_that_stops_says_what_it_found,
        start::a_page_that_stops_says_that_the_storage_is_newer,
        start::a_page_that_waits_for_ever_says_what_to_do,
    }
    firefox: plays, webkit: "A session under its driver keeps nothing when it ends, whatever the page does.", {
        keep::a_killed_browser_keeps_what_it_said_it_keeps,
        project::power_cuts_lose_nothing_of_a_project_that_was_kept,
        knit::five_thousand_taps_lose_nothing_that_was_shown_as_kept,
        knit::ten_thousand_taps_lose_nothing_that_was_shown_as_kept,
    }
    firefox: "It takes seconds to start, so that the power is cut with one window.", webkit: "A session under its driver keeps nothing when it ends, whatever the page does.", {
        windows::twenty_power_cuts_with_two_windows_lose_nothing,
        windows::forty_power_cuts_with_two_windows_lose_nothing,
    }
    firefox: plays, webkit: "Its driver has no switch that denies storage.", {
        guest::without_storage_it_computes_and_says_so,
        embed::a_lesson_computes_without_storage,
    }
    firefox: plays, webkit: "A window draws nothing while its driver is at another one.", {
        project::two_windows_hear_of_each_other,
        knit::two_windows_add_up,
    }
    firefox: plays, webkit: "A key of the driver is not heard after a tap of it on a link.", {
        knit::keys_count_once_and_not_while_she_types,
    }
    firefox: plays, webkit: "A window cannot be given a size.", {
        still::on_a_phone_the_answer_is_in_the_window,
        home::most_tools_stand_in_the_first_window,
    }
    firefox: "Its paper is packed, so that its pages cannot be counted.", webkit: "Its driver makes no paper.", {
        print::every_tool_is_printed_on_one_page,
    }
    firefox: "Its driver cannot show what a printer sees.", webkit: "Its driver cannot show what a printer sees.", {
        paper::a_page_printed_at_dusk_is_dark_on_white,
        print::paper_holds_rounds_to_tick_and_nothing_to_press,
    }
    firefox: plays, webkit: plays, {
        snapshot::every_state_says_what_it_said,
    }
    firefox: "The table holds what Chromium measures, and lines break a little otherwise here.", webkit: "A window cannot be given a size.", {
        heights::every_tool_is_as_high_as_the_table_says,
    }
    firefox: plays, webkit: "A window cannot be given a size.", {
        gallery::every_state_fits_a_phone,
    }
    firefox: "A walk takes a minute: a tablet and a phone that stands are what is walked here.", webkit: "A window cannot be given a size.", {
        gallery::every_state_fits_a_phone_on_its_side,
    }
}
