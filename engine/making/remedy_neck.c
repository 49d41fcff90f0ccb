/* Neck, frets, short string and headstock. */
#include "remedy_cures.h"

#define NECK_THICK N_("Neck {1 mm} thick at the first fret instead of {3 mm}")
#define BOARD N_("Fretboard {1 mm} thick instead of {3 mm}")
#define NUT N_("Nut {1 mm} wide instead of {3 mm}")
#define TANG N_("Fret wire with a tang of {1 mm} instead of {3 mm}")
#define SLOTS N_("Saw the slots {1 mm} wide instead of {3 mm}")
#define PEG N_("Side peg {1 mm} ahead of the start instead of {3 mm}")
#define FLATTEN N_("Flatten the tube to {1 mm} instead of {3 mm}")
#define TUBE N_("Tube of {1 mm} instead of {3 mm}")
#define CHANNEL_FROM N_("Start the rod's channel {1 mm} from the nut")
#define FIRST_APART N_("Nearest posts {1 mm} apart instead of {3 mm}")
#define LAST_APART N_("Farthest posts {1 mm} apart instead of {3 mm}")
#define POST_PITCH N_("Posts {1 mm} apart along the headstock instead of {3 mm}")
#define HEAD_THICK N_("Headstock {1 mm} thick instead of {3 mm}")
#define HEAD_WIDE N_("Headstock {1 mm} wide instead of {3 mm}")

const RwCure rw_cures_neck[] = {
  { "neck.under_rod", RW_P_neck_rod_depth, RW_LOWER, 0.1,
    NULL, N_("Rod channel {1 mm} deep instead of {3 mm}") },
  { "neck.under_rod", RW_P_neck_thickness_first, RW_RAISE, 0.5, NECK_THICK, NULL },
  { "neck.under_rod", RW_P_neck_section, RW_RAISE, 0.1,
    N_("A squarer back: exponent {1} instead of {3}"), NULL },
  { "neck.beside_rod", RW_P_neck_rod_width, RW_LOWER, 0.1,
    NULL, N_("Rod channel {1 mm} wide instead of {3 mm}") },
  { "neck.beside_rod", RW_P_nut_width, RW_RAISE, 0.5, NUT, NULL },
  { "neck.relief_not_reached", RW_P_neck_rod_end, RW_LOWER, 5,
    NULL, N_("End the rod's channel {1 mm} before the rim") },
  { "neck.relief_not_reached", RW_P_neck_thickness_first, RW_RAISE, 0.5, NECK_THICK, NULL },
  { "neck.relief_not_reached", RW_P_setup_relief, RW_RAISE, 0.05,
    N_("Ask for {1 mm} of relief instead of {3 mm}"), NULL },
  { "neck.rod_missing", RW_P_neck_thickness_first, RW_RAISE, 0.5, NECK_THICK, NULL },
  { "neck.no_wood", RW_P_neck_thickness_first, RW_RAISE, 0.5, NECK_THICK, NULL },
  { "neck.no_wood", RW_P_fretboard_thickness, RW_LOWER, 0.1, NULL, BOARD },
  { "neck.thin", RW_P_neck_thickness_first, RW_RAISE, 0.5, NECK_THICK, NULL },
  { "neck.thick", RW_P_neck_thickness_first, RW_LOWER, 0.5, NULL, NECK_THICK },
  { "neck.taper_reversed", RW_P_neck_thickness_last, RW_RAISE, 0.5,
    N_("Neck {1 mm} thick near the heel instead of {3 mm}"),
    NULL },
  { "board.thin", RW_P_fretboard_thickness, RW_RAISE, 0.1, BOARD, NULL },
  { "board.thick", RW_P_fretboard_thickness, RW_LOWER, 0.1, NULL, BOARD },
  { "board.edge_margin", RW_P_nut_edge_margin, RW_RAISE, 0.1,
    N_("Outer strings {1 mm} inside the edges"), NULL },
  { "nut.pitch", RW_P_nut_width, RW_RAISE, 0.5, NUT, NULL },
  { "nut.pitch", RW_P_nut_edge_margin, RW_LOWER, 0.1, NULL, N_("Outer strings {1 mm} inside the edges") },
  { "frets.floor", RW_P_fretboard_thickness, RW_RAISE, 0.1, BOARD, NULL },
  { "frets.floor", RW_P_frets_tang_depth, RW_LOWER, 0.1, NULL, TANG },
  { "frets.slot_room", RW_P_frets_tang_depth, RW_EITHER, 0.1, TANG, TANG },
  { "frets.slot_width", RW_P_frets_slot_width, RW_EITHER | RW_AIM, 0.01, SLOTS, SLOTS },
  { "frets.slot_width", RW_P_frets_tang_width, RW_EITHER | RW_AIM, 0.01,
    N_("Fret wire with a tang {1 mm} wide"),
    N_("Fret wire with a tang {1 mm} wide") },
  { "frets.last_on_board", RW_P_frets_count, RW_LOWER, 0, NULL, N_("{1} frets instead of {3}") },
  { "frets.last_on_board", RW_P_bridge_offset, RW_LOWER, 0.5,
    NULL, N_("Bridge {1 mm} beyond the middle instead of {3 mm}") },
  { "frets.last_on_board", RW_P_fretboard_end_gap, RW_LOWER, 0.1,
    NULL, N_("End the board {1 mm} from the hoop") },
  { "frets.last_on_board", RW_P_rim_outer_diameter, RW_LOWER, 0.5,
    NULL, N_("Turn the rim to {1 mm} instead of {3 mm}") },
  { "setup.action_fret", RW_P_setup_action_fret, RW_LOWER, 0, NULL, N_("Measure the action at fret {1}") },

  { "fifth.spacing", RW_P_fifth_spacing, RW_RAISE, 0.1,
    N_("Start the short string {1 mm} from its neighbour"), NULL },
  { "fifth.start_height", RW_P_fifth_start_height, RW_LOWER, 0.05,
    NULL, N_("Rest of the short string {1 mm} over the frets") },
  { "fifth.start_fret", RW_P_fifth_start_fret, RW_LOWER, 0, NULL, N_("Start the short string at fret {1}") },
  { "fifth.shoulder", RW_P_fifth_shoulder_length, RW_LOWER, 0.5,
    NULL, N_("Shoulder {1 mm} long instead of {3 mm}") },
  { "fifth.shoulder", RW_P_fifth_start_fret, RW_RAISE, 0, N_("Start the short string at fret {1}"), NULL },
  { "fifth.peg_at_string", RW_P_fifth_peg_distance, RW_LOWER, 0.5, NULL, PEG },
  { "fifth.peg_at_string", RW_P_fifth_shoulder, RW_RAISE, 0.5,
    N_("Full width {1 mm} ahead of the start instead of {3 mm}"),
    NULL },
  { "fifth.peg_at_rod", RW_P_fifth_spacing, RW_RAISE, 0.1,
    N_("Start the short string {1 mm} from its neighbour"), NULL },
  { "fifth.peg_at_rod", RW_P_neck_rod_width, RW_LOWER, 0.1,
    NULL, N_("Rod channel {1 mm} wide instead of {3 mm}") },
  { "fifth.peg_at_rod", RW_P_nut_width, RW_RAISE, 0.5, NUT, NULL },
  { "fifth.peg_place", RW_P_fifth_peg_distance, RW_LOWER, 0.5, NULL, PEG },
  { "fifth.tube_bore", RW_P_fifth_tube_outer, RW_RAISE, 0.1, TUBE, NULL },
  { "fifth.tube_bore", RW_P_fifth_tube_wall, RW_LOWER, 0.05,
    NULL, N_("Tube with a wall of {1 mm} instead of {3 mm}") },
  { "fifth.tube_flat", RW_P_fifth_tube_flatten, RW_RAISE, 0.1, FLATTEN, NULL },
  { "fifth.tube_flat", RW_P_fifth_tube_wall, RW_LOWER, 0.05,
    NULL, N_("Tube with a wall of {1 mm} instead of {3 mm}") },
  { "fifth.tube_at_tang", RW_P_fretboard_thickness, RW_RAISE, 0.1, BOARD, NULL },
  { "fifth.tube_at_tang", RW_P_fifth_tube_flatten, RW_LOWER, 0.1, NULL, FLATTEN },
  { "fifth.tube_at_rod", RW_P_neck_rod_start, RW_RAISE, 1, CHANNEL_FROM, NULL },
  { "fifth.tube_at_rod", RW_P_neck_rod_width, RW_LOWER, 0.1,
    NULL, N_("Rod channel {1 mm} wide instead of {3 mm}") },

  { "headstock.posts_collide", RW_P_headstock_post_pitch, RW_RAISE, 0.5, POST_PITCH, NULL },
  { "headstock.posts_collide", RW_P_headstock_post_across_last, RW_RAISE, 0.5, LAST_APART, NULL },
  { "headstock.posts_collide", RW_P_headstock_post_across_first, RW_RAISE, 0.5, FIRST_APART, NULL },
  { "headstock.post_at_edge", RW_P_headstock_width, RW_RAISE, 0.5, HEAD_WIDE, NULL },
  { "headstock.post_at_edge", RW_P_headstock_post_across_first, RW_LOWER, 0.5, NULL, FIRST_APART },
  { "headstock.post_at_edge", RW_P_headstock_length, RW_RAISE, 1,
    N_("Headstock {1 mm} long instead of {3 mm}"), NULL },
  { "headstock.bend", RW_P_headstock_post_first, RW_RAISE, 0.5,
    N_("First posts {1 mm} from the nut instead of {3 mm}"), NULL },
  { "headstock.bend", RW_P_headstock_post_across_first, RW_LOWER, 0.5, NULL, FIRST_APART },
  { "headstock.ears", RW_P_headstock_width, RW_LOWER, 0.5, NULL, HEAD_WIDE },
  { "headstock.angle", RW_P_headstock_angle, RW_RAISE, 0.5,
    N_("Lean the headstock back by {1 deg} instead of {3 deg}"), NULL },
  { "headstock.thin", RW_P_headstock_thickness, RW_RAISE, 0.1, HEAD_THICK, NULL },
  { "headstock.thick", RW_P_headstock_thickness, RW_LOWER, 0.1, NULL, HEAD_THICK },
};

const int rw_cures_neck_count = G_N_ELEMENTS (rw_cures_neck);
