#include "quantity.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "unit.h"

/* Parentheses deeper than this are no work of a hand, and must not exhaust the stack. */
#define DEPTH_MAX 32

/* A number with or without a unit, as far as it has been read. */
typedef struct
{
  double        number;
  const RwUnit *unit;   /* NULL: none yet */
  gboolean      closed; /* the unit belongs to the number alone: (2 in), 1' 2" */
} Value;

/* sum     = term { ( "+" | "-" ) term }
 * term    = factor { ( "*" | "/" ) factor }
 * factor  = [ "+" | "-" ] ( "(" sum ")" | number ) [ unit ]
 * number  = decimal | [ digits ] fraction | number feet number inches
 */
typedef struct
{
  const char   *at;
  const RwUnit *target;
  const RwUnit *bare;
  char          decimal;
  int           depth;
  GError      **error;
} Reader;

G_DEFINE_QUARK (rw-quantity-error-quark, rw_quantity_error)

/* The signs that stand for an operator besides the one on the keyboard. */
static const struct
{
  const char *text;
  char        sign;
} operators[] = {
  { "+", '+' }, { "-", '-' }, { "−", '-' }, { "*", '*' }, { "×", '*' }, { "·", '*' },
  { "/", '/' }, { "÷", '/' }, { "∕", '/' }, { "⁄", '/' },
};

static const struct
{
  const char *sign;
  double      number;
} vulgar[] = {
  { "½", 0.5 },   { "¼", 0.25 },    { "¾", 0.75 },    { "⅛", 0.125 }, { "⅜", 0.375 },
  { "⅝", 0.625 }, { "⅞", 0.875 },   { "⅓", 1.0 / 3 }, { "⅔", 2.0 / 3 },
};

/* What stands at a place, for a message: up to the next blank, and not endless. */
static char *
piece (const char *at)
{
  const char *end = at;

  for (int i = 0; i < 24 && *end != '\0' && !g_unichar_isspace (g_utf8_get_char (end)); i++)
    end = g_utf8_next_char (end);
  return g_strndup (at, (gsize) (end - at));
}

static gboolean
fail (Reader *reader, RwQuantityError code, const char *format, const char *at)
{
  g_autofree char *quoted = piece (at);

  g_set_error (reader->error, RW_QUANTITY_ERROR, (int) code, format, quoted);
  return FALSE;
}

static gboolean
fail_without_number (Reader *reader)
{
  if (*reader->at != '\0')
    return fail (reader, RW_QUANTITY_ERROR_SYNTAX, _("“%s” is not a number"), reader->at);
  g_set_error_literal (reader->error, RW_QUANTITY_ERROR, RW_QUANTITY_ERROR_SYNTAX,
                       _("A number is missing at the end"));
  return FALSE;
}

static gboolean
check_finite (Reader *reader, double number, const char *from)
{
  return isfinite (number)
         || fail (reader, RW_QUANTITY_ERROR_VALUE, _("“%s” leads to a number that is too large"), from);
}

/* Returns the place that it moves on to. */
static const char *
skip_blanks (Reader *reader)
{
  while (g_unichar_isspace (g_utf8_get_char (reader->at)))
    reader->at = g_utf8_next_char (reader->at);
  return reader->at;
}

/* Takes one of the given operators, or returns 0. */
static char
take_operator (Reader *reader, const char *wanted)
{
  if (*skip_blanks (reader) == '\0')
    return 0;
  for (guint i = 0; i < G_N_ELEMENTS (operators); i++)
    if (strchr (wanted, operators[i].sign) != NULL && g_str_has_prefix (reader->at, operators[i].text))
      {
        reader->at += strlen (operators[i].text);
        return operators[i].sign;
      }
  return 0;
}

static gboolean
take_vulgar (Reader *reader, double *number)
{
  for (guint i = 0; i < G_N_ELEMENTS (vulgar); i++)
    if (g_str_has_prefix (reader->at, vulgar[i].sign))
      {
        reader->at += strlen (vulgar[i].sign);
        *number = vulgar[i].number;
        return TRUE;
      }
  return FALSE;
}

static const char *
after_digits (const char *at)
{
  while (g_ascii_isdigit (*at))
    at++;
  return at;
}

/* Two whole numbers with nothing but a slash between: "3/8", or the sign for it.  Moves on only if it is. */
static gboolean
take_fraction (Reader *reader, double *number)
{
  const char *slash = after_digits (reader->at);
  const char *below = slash + (*slash == '/' ? 1 : g_str_has_prefix (slash, "⁄") ? strlen ("⁄") : 0);
  const char *end = after_digits (below);
  double      divisor;

  if (take_vulgar (reader, number))
    return TRUE;
  if (slash == reader->at || below == slash || end == below || *end == '.' || *end == reader->decimal)
    return FALSE;
  divisor = g_ascii_strtod (below, NULL);
  if (!(divisor > 0) || !isfinite (divisor))
    return FALSE;
  *number = g_ascii_strtod (reader->at, NULL) / divisor;
  reader->at = end;
  return TRUE;
}

/* The end of digits, a decimal mark and an exponent; at itself if there is no digit. */
static const char *
after_decimal (const Reader *reader, const char *at)
{
  const char *whole = after_digits (at);
  const char *end = whole;

  if (*end == '.' || *end == reader->decimal)
    end = after_digits (end + 1);
  if (end - at < 1 || (end - at == 1 && whole == at))
    return at;
  if (*end == 'e' || *end == 'E')
    {
      const char *power = end + 1 + (end[1] == '-' || end[1] == '+');

      if (g_ascii_isdigit (*power))
        end = after_digits (power);
    }
  return end;
}

/* A number without sign or unit, with the fraction that may follow whole digits. */
static gboolean
read_number (Reader *reader, double *number)
{
  const char      *start = reader->at;
  const char      *end = after_decimal (reader, start);
  g_autofree char *digits = g_strndup (start, (gsize) (end - start));
  double           fraction;

  if (end == start)
    return take_vulgar (reader, number) || fail_without_number (reader);
  if (*end == '.' || *end == ',')
    return fail (reader, RW_QUANTITY_ERROR_SYNTAX,
                 _("“%s” has a decimal mark too many, or one that is not used here"), start);
  g_strdelimit (digits, ",", '.');
  *number = g_ascii_strtod (digits, NULL);
  reader->at = end;
  if (end == after_digits (start))
    {
      skip_blanks (reader);
      if (take_fraction (reader, &fraction))
        *number += fraction;
      else
        reader->at = end;
    }
  return check_finite (reader, *number, start);
}

/* A unit, if one follows; FALSE only where one follows that can't. */
static gboolean
read_unit (Reader *reader, const RwUnit **unit)
{
  size_t length;

  *unit = rw_unit_match (skip_blanks (reader), reader->target, &length);
  if (*unit != NULL)
    {
      reader->at += length;
      return TRUE;
    }
  if (rw_unit_match (reader->at, NULL, &length) != NULL)
    return fail (reader, RW_QUANTITY_ERROR_UNIT, _("“%s” measures something else"), reader->at);
  if (g_unichar_isalpha (g_utf8_get_char (reader->at)))
    return fail (reader, RW_QUANTITY_ERROR_UNIT, _("“%s” is no unit known here"), reader->at);
  return TRUE;
}

/* What follows feet without an operator: inches, with or without whole ones. */
static gboolean
read_inches (Reader *reader, Value *value)
{
  const char   *start = skip_blanks (reader);
  const RwUnit *unit = NULL;
  double        inches;

  if (!take_fraction (reader, &inches))
    {
      if (!g_ascii_isdigit (*start))
        return TRUE;
      if (!read_number (reader, &inches))
        return FALSE;
    }
  if (!read_unit (reader, &unit))
    return FALSE;
  if (unit == NULL || !rw_unit_is_inch (unit))
    return fail (reader, RW_QUANTITY_ERROR_UNIT, _("“%s” after feet must be inches, and say so"), start);
  *value = (Value){ value->number * 12 + inches, unit, TRUE };
  return check_finite (reader, value->number, start);
}

static gboolean read_sum (Reader *reader, Value *value);

static gboolean
read_parenthesis (Reader *reader, Value *value)
{
  const char *start = reader->at;

  if (++reader->depth > DEPTH_MAX)
    return fail (reader, RW_QUANTITY_ERROR_SYNTAX, _("“%s” has too many parentheses"), start);
  reader->at++;
  if (!read_sum (reader, value))
    return FALSE;
  if (*skip_blanks (reader) != ')')
    return fail (reader, RW_QUANTITY_ERROR_SYNTAX, _("“%s” is not closed"), start);
  reader->at++;
  reader->depth--;
  value->closed = value->unit != NULL;
  return TRUE;
}

static gboolean
read_factor (Reader *reader, Value *value)
{
  gboolean      negative = take_operator (reader, "+-") == '-';
  const char   *start = skip_blanks (reader);
  const RwUnit *unit;

  *value = (Value){ 0, NULL, FALSE };
  if (*start == '(' ? !read_parenthesis (reader, value) : !read_number (reader, &value->number))
    return FALSE;
  if (!read_unit (reader, &unit))
    return FALSE;
  if (unit != NULL && value->unit != NULL)
    return fail (reader, RW_QUANTITY_ERROR_UNIT, _("“%s” has two units"), start);
  if (unit != NULL)
    value->unit = unit;
  if (unit != NULL && rw_unit_is_foot (unit) && !read_inches (reader, value))
    return FALSE;
  if (negative)
    value->number = -value->number;
  return TRUE;
}

/* Degrees of a scale that begins elsewhere can't be added or multiplied. */
static gboolean
can_reckon (Reader *reader, const Value *value, const char *from)
{
  return value->unit == NULL || value->unit->offset == 0
         || fail (reader, RW_QUANTITY_ERROR_UNIT,
                  _("“%s” must stand alone: such degrees can’t be reckoned with"), from);
}

/* A product has at most one unit.  In "5/8 in" it belongs to the whole fraction. */
static gboolean
read_term (Reader *reader, Value *value)
{
  const char *start = reader->at;
  char        sign;

  if (!read_factor (reader, value))
    return FALSE;
  while ((sign = take_operator (reader, "*/")) != 0)
    {
      const char *from = skip_blanks (reader);
      Value       factor;

      if (!read_factor (reader, &factor) || !can_reckon (reader, value, start)
          || !can_reckon (reader, &factor, from))
        return FALSE;
      if (factor.unit != NULL && (value->unit != NULL || (sign == '/' && factor.closed)))
        return fail (reader, RW_QUANTITY_ERROR_UNIT,
                     sign == '*' ? _("“%s” multiplies a unit by a unit") : _("“%s” divides by a unit"), from);
      if (sign == '/' && factor.number == 0)
        return fail (reader, RW_QUANTITY_ERROR_VALUE, _("“%s” divides by zero"), from);
      value->number = sign == '*' ? value->number * factor.number : value->number / factor.number;
      if (factor.unit != NULL)
        value->unit = factor.unit;
      if (!check_finite (reader, value->number, start))
        return FALSE;
    }
  return TRUE;
}

/* A sum: where one term has a unit, a bare one is in the bare unit. */
static void
add (const Reader *reader, Value *sum, Value term)
{
  if (sum->unit == NULL && term.unit != NULL)
    sum->unit = reader->bare;
  if (term.unit == NULL && sum->unit != NULL)
    term.unit = reader->bare;
  if (sum->unit != term.unit)
    {
      sum->number *= sum->unit->factor / reader->target->factor;
      term.number *= term.unit->factor / reader->target->factor;
      sum->unit = reader->target;
    }
  sum->number += term.number;
}

static gboolean
read_sum (Reader *reader, Value *value)
{
  const char *start = reader->at;
  char        sign;

  if (!read_term (reader, value))
    return FALSE;
  while ((sign = take_operator (reader, "+-")) != 0)
    {
      const char *from = skip_blanks (reader);
      Value       term;

      if (!read_term (reader, &term) || !can_reckon (reader, value, start)
          || !can_reckon (reader, &term, from))
        return FALSE;
      if (sign == '-')
        term.number = -term.number;
      add (reader, value, term);
      if (!check_finite (reader, value->number, start))
        return FALSE;
    }
  return TRUE;
}

static gboolean
read_all (Reader *reader, Value *value)
{
  if (!read_sum (reader, value))
    return FALSE;
  return *skip_blanks (reader) == '\0'
         || fail (reader, RW_QUANTITY_ERROR_SYNTAX, _("“%s” is not expected here"), reader->at);
}

gboolean
rw_quantity_read (const char  *text,
                  const char  *unit,
                  const char  *bare,
                  char         decimal,
                  double      *value,
                  GError     **error)
{
  const RwUnit *target = rw_unit_find (unit);
  Reader        reader = { text, target, bare != NULL ? rw_unit_find (bare) : target, decimal, 0, error };
  Value         read;
  double        result;

  g_return_val_if_fail (target != NULL && reader.bare != NULL, FALSE);
  if (!g_utf8_validate (text, -1, NULL))
    {
      g_set_error_literal (error, RW_QUANTITY_ERROR, RW_QUANTITY_ERROR_SYNTAX, _("The text is not UTF-8"));
      return FALSE;
    }
  if (!read_all (&reader, &read))
    return FALSE;
  if (read.unit == NULL)
    read.unit = reader.bare;
  result = read.number;
  if (read.unit != target)
    result = result * (read.unit->factor / target->factor)
             + (read.unit->offset - target->offset) / target->factor;
  if (!check_finite (&reader, result, text))
    return FALSE;
  *value = result + 0.0; /* -0 is 0 */
  return TRUE;
}
