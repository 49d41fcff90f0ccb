#include "note.h"

#include <math.h>
#include <string.h>

#define SEMITONES_C0_TO_A4 57

/* Semitones above C, by letter from A. */
static const int above_c[] = { 9, 11, 0, 2, 4, 5, 7 };

typedef struct
{
  char letter;
  int  shift; /* semitones: 1 raised, -1 lowered */
  int  octave;
} Note;

static int
take_shift (const char **at)
{
  static const struct
  {
    const char *sign;
    int         shift;
  } signs[] = { { "#", 1 }, { "♯", 1 }, { "b", -1 }, { "♭", -1 } };

  for (guint i = 0; i < G_N_ELEMENTS (signs); i++)
    if (g_str_has_prefix (*at, signs[i].sign))
      {
        *at += strlen (signs[i].sign);
        return signs[i].shift;
      }
  return 0;
}

static gboolean
read_note (const char *text, Note *note)
{
  const char *at = text + 1;

  *note = (Note){ g_ascii_toupper (text[0]), 0, 0 };
  if (note->letter < 'A' || note->letter > 'G')
    return FALSE;
  note->shift = take_shift (&at);
  if (*at < '0' || *at > '8' || at[1] != '\0')
    return FALSE;
  note->octave = *at - '0';
  return TRUE;
}

double
rw_note_frequency (const char *note, double a4)
{
  Note   read;
  char  *end;
  double hertz;

  if (read_note (note, &read))
    return a4
           * exp2 ((12 * read.octave + above_c[read.letter - 'A'] + read.shift - SEMITONES_C0_TO_A4) / 12.0);
  if (!g_ascii_isdigit (note[0]) || strpbrk (note, "xX") != NULL)
    return NAN;
  hertz = g_ascii_strtod (note, &end);
  if (*end != '\0')
    return NAN;
  return hertz;
}

char *
rw_note_name (const char *note)
{
  static const char *const shifts[] = { "b", "", "#" };
  Note                     read;

  if (!read_note (note, &read))
    return NULL;
  return g_strdup_printf ("%c%s%d", read.letter, shifts[read.shift + 1], read.octave);
}
