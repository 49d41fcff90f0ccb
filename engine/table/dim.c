#include "dim.h"

#include <string.h>

/*   DIM (RW_FRETS_POSITION, "frets.position[n]", FRET, "neck", label, "mm", FRETBOARD, 0.1, definition)
 *
 * becomes  { "frets.position[n]", "neck", label, "mm", definition, 0.1, RW_STEP_FRETBOARD,
 *            RW_FRETS_POSITION, RW_SPAN_FRET },
 */
const RwDim rw_dims[] = {
#define DIM(name, id, index, part, label, unit, step, tolerance, definition) \
  { id, part, label, unit, definition, tolerance, RW_STEP_##step, name, RW_SPAN_##index },
#include "dims.def"
#undef DIM
};
const int rw_dims_count = G_N_ELEMENTS (rw_dims);

const char *
rw_step_title (RwStep step)
{
  static const char *const titles[] = {
    [RW_STEP_CHOOSE] = N_("Choose head, scale and bridge"),
    [RW_STEP_STOCK] = N_("Cut the blanks"),
    [RW_STEP_SEGMENTS] = N_("Saw the segments"),
    [RW_STEP_COURSES] = N_("Glue and true the courses"),
    [RW_STEP_STACK] = N_("Stack the courses"),
    [RW_STEP_TURN] = N_("Turn the rim"),
    [RW_STEP_EDGE] = N_("Shape the bearing edge"),
    [RW_STEP_HOOP] = N_("Bend and join the hoop"),
    [RW_STEP_NECK_BLANK] = N_("Square the neck blank"),
    [RW_STEP_HEEL] = N_("Cut the heel"),
    [RW_STEP_HEADSTOCK] = N_("Shape and drill the headstock"),
    [RW_STEP_FRETBOARD] = N_("Slot and taper the fretboard"),
    [RW_STEP_FRETS] = N_("Glue the fretboard and fret it"),
    [RW_STEP_FIFTH] = N_("Short string’s peg and nut"),
    [RW_STEP_CARVE] = N_("Carve the neck"),
    [RW_STEP_FIT] = N_("Fit the neck to the rim"),
    [RW_STEP_SHOES] = N_("Drill for the shoes"),
    [RW_STEP_HOOKS] = N_("Bend and thread the hooks"),
    [RW_STEP_STRING_UP] = N_("Dry assembly and stringing"),
    [RW_STEP_FINISH] = N_("Finish"),
    [RW_STEP_SET_UP] = N_("Set up"),
  };

  G_STATIC_ASSERT (G_N_ELEMENTS (titles) == RW_STEP_COUNT);
  return titles[step];
}

static const char *const step_names[] = {
  [RW_STEP_CHOOSE] = "choose",
  [RW_STEP_STOCK] = "stock",
  [RW_STEP_SEGMENTS] = "segments",
  [RW_STEP_COURSES] = "courses",
  [RW_STEP_STACK] = "stack",
  [RW_STEP_TURN] = "turn",
  [RW_STEP_EDGE] = "edge",
  [RW_STEP_HOOP] = "hoop",
  [RW_STEP_NECK_BLANK] = "neck-blank",
  [RW_STEP_HEEL] = "heel",
  [RW_STEP_HEADSTOCK] = "headstock",
  [RW_STEP_FRETBOARD] = "fretboard",
  [RW_STEP_FRETS] = "frets",
  [RW_STEP_FIFTH] = "fifth",
  [RW_STEP_CARVE] = "carve",
  [RW_STEP_FIT] = "fit",
  [RW_STEP_SHOES] = "shoes",
  [RW_STEP_HOOKS] = "hooks",
  [RW_STEP_STRING_UP] = "string-up",
  [RW_STEP_FINISH] = "finish",
  [RW_STEP_SET_UP] = "set-up",
};

const char *
rw_step_name (RwStep step)
{
  G_STATIC_ASSERT (G_N_ELEMENTS (step_names) == RW_STEP_COUNT);
  return step_names[step];
}

int
rw_step_find (const char *name)
{
  for (int step = 0; step < RW_STEP_COUNT; step++)
    if (strcmp (name, step_names[step]) == 0)
      return step;
  return -1;
}

const RwDim *
rw_slot_dim (RwSlot slot)
{
  int low = 0, high = rw_dims_count;

  g_return_val_if_fail ((int) slot >= 0 && slot < RW_SLOT_COUNT, NULL);
  while (high - low > 1)
    {
      int middle = (low + high) / 2;

      if (rw_dims[middle].first <= slot)
        low = middle;
      else
        high = middle;
    }
  return &rw_dims[low];
}

/* The number that stands for an index letter in a slot: i strings, n frets, k the rest. */
static int
index_of (const RwDim *dim, RwSlot slot, char letter)
{
  int place = (int) slot - (int) dim->first;

  if (dim->span != RW_SPAN_STRING_FRET)
    return place;
  return letter == 'i' ? place / RW_SPAN_FRET : place % RW_SPAN_FRET;
}

char *
rw_slot_id (RwSlot slot)
{
  const RwDim *dim = rw_slot_dim (slot);
  GString     *id = g_string_new (NULL);

  for (const char *at = dim->id; *at != '\0'; at++)
    if (at > dim->id && at[-1] == '[')
      g_string_append_printf (id, "%d", index_of (dim, slot, *at));
    else
      g_string_append_c (id, *at);
  return g_string_free (id, FALSE);
}

/* Whether a lone index letter stands at a place of a label, and the row has that index. */
static gboolean
is_index_word (const RwDim *dim, const char *label, const char *at)
{
  const char index[] = { '[', *at, ']', '\0' };

  return (*at == 'i' || *at == 'k' || *at == 'n') && (at == label || at[-1] == ' ')
         && (at[1] == ' ' || at[1] == '\0') && strstr (dim->id, index) != NULL;
}

static const char *
in_english (const char *english)
{
  return english;
}

char *
rw_slot_label_in (RwSlot slot, const char *(*translate) (const char *english))
{
  const RwDim     *dim = rw_slot_dim (slot);
  const char      *label = translate (dim->label);
  GString         *text = g_string_new (NULL);
  gboolean         found = FALSE;
  g_autofree char *whole = NULL;

  for (const char *at = label; *at != '\0'; at++)
    if (is_index_word (dim, label, at))
      {
        g_string_append_printf (text, "%d", index_of (dim, slot, *at));
        found = TRUE;
      }
    else
      g_string_append_c (text, *at);
  whole = g_string_free (text, FALSE);
  if (found || dim->span == RW_SPAN_ONE)
    return g_steal_pointer (&whole);
  return g_strdup_printf (translate (dim->span == RW_SPAN_FRET     ? N_("%s, fret %d")
                                     : dim->span == RW_SPAN_STRING ? N_("%s, string %d")
                                                                   : N_("%s %d")),
                          whole, index_of (dim, slot, 'k'));
}

char *
rw_slot_label (RwSlot slot)
{
  return rw_slot_label_in (slot, in_english);
}

/* Reads "[12]", written as rw_slot_id() writes it.  Moves on only if it is an index from low to high. */
static gboolean
take_index (const char **at, int low, int high, int *index)
{
  const char *p = *at;
  int         value = 0;

  if (*p++ != '[' || !g_ascii_isdigit (*p) || (*p == '0' && p[1] != ']'))
    return FALSE;
  for (; g_ascii_isdigit (*p) && value <= high; p++)
    value = value * 10 + (*p - '0');
  if (*p != ']' || value < low || value > high)
    return FALSE;
  *index = value;
  *at = p + 1;
  return TRUE;
}

/* The place in the row that the indices after an id stand for, or -1. */
static int
place_of (const RwDim *dim, const char *at)
{
  int first = 0, second = 0;

  if (dim->span == RW_SPAN_STRING_FRET)
    {
      if (!take_index (&at, 1, RW_STRINGS_MAX, &first) || !take_index (&at, 0, RW_FRETS_MAX, &second))
        return -1;
    }
  else if (dim->span != RW_SPAN_ONE
           && !take_index (&at, dim->span == RW_SPAN_FRET ? 0 : 1, dim->span - 1, &second))
    return -1;
  return *at == '\0' ? first * RW_SPAN_FRET + second : -1;
}

int
rw_slot_find (const char *id)
{
  size_t length = strcspn (id, "[");

  for (int i = 0; i < rw_dims_count; i++)
    if (strcspn (rw_dims[i].id, "[") == length && strncmp (rw_dims[i].id, id, length) == 0)
      {
        int place = place_of (&rw_dims[i], id + length);

        return place < 0 ? -1 : (int) rw_dims[i].first + place;
      }
  return -1;
}
