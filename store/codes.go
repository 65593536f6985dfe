package store

import (
	"crypto/rand"
	"crypto/sha256"
	"database/sql"
	"fmt"
	"strings"
	"time"
)

// Grant is what a code gives.
type Grant struct {
	Herd     HerdID
	Role     Role
	Operator bool
}

// codeAlphabet has 32 signs, without I, L, O and U, which are misread.
// (Crockford's base 32.)
const codeAlphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// codeLength gives 50 bits: too many to try within the life of a code.
const codeLength = 10

// NewCode makes a one-time code, kept only as its hash, that gives a role in a
// herd; herd 0 is a herd still to be made, with operator also the server. The
// code is written as 7K3QD-M4XNA.
func (tx *Tx) NewCode(herd HerdID, role Role, operator bool, now time.Time, good time.Duration) (code string, err error) {
	var b [codeLength]byte
	if _, err := rand.Read(b[:]); err != nil {
		return "", fmt.Errorf("new code: %w", err)
	}
	for i := range b {
		b[i] = codeAlphabet[b[i]%byte(len(codeAlphabet))]
	}
	code = string(b[:codeLength/2]) + "-" + string(b[codeLength/2:])
	if _, err := tx.exec("DELETE FROM code WHERE expires_at <= ?", millis(now)); err != nil {
		return "", fmt.Errorf("old codes: %w", err)
	}
	_, err = tx.exec("INSERT INTO code (hash, herd, role, operator, expires_at) VALUES (?, ?, ?, ?, ?)",
		codeHash(code), orNull(herd), string(role), operator, millis(now.Add(good)))
	if err != nil {
		return "", fmt.Errorf("new code: %w", err)
	}
	return code, nil
}

// UseCode spends a code; false if there is none such, or it is spent or old.
// Case, dashes and blanks in it do not matter.
//
// Codes are found by their hash, so how long it takes tells nothing of how near
// a wrong one came.
func (tx *Tx) UseCode(code string, now time.Time) (Grant, bool, error) {
	var g Grant
	var herd sql.NullInt64
	ok, err := tx.one("UPDATE code SET used_at = ?1 WHERE hash = ?2 AND used_at IS NULL AND expires_at > ?1"+
		" RETURNING herd, role, operator", []any{millis(now), codeHash(code)}, &herd, &g.Role, &g.Operator)
	if err != nil {
		return Grant{}, false, fmt.Errorf("code: %w", err)
	}
	g.Herd = HerdID(herd.Int64)
	return g, ok, nil
}

// codeHash is the hash of a code as a person may have typed it.
func codeHash(code string) []byte {
	plain := strings.Map(func(r rune) rune {
		switch r {
		case '-', '–', '—', '_', ' ', '\t', '\n', '\r', '\u00a0':
			return -1
		case 'O':
			return '0'
		case 'I', 'L':
			return '1'
		}
		return r
	}, strings.ToUpper(code))
	sum := sha256.Sum256([]byte("troughbell code " + plain))
	return sum[:]
}

// LooksLikeCode reports whether a text can be nothing but a one-time code: two
// blocks of five signs with a dash between them, or ten signs with a digit.
func LooksLikeCode(text string) bool {
	t := strings.ToUpper(strings.TrimSpace(text))
	a, b, dashed := strings.Cut(t, "-")
	if dashed && (len(a) != codeLength/2 || len(b) != codeLength/2) || !dashed && len(t) != codeLength {
		return false
	}
	digit := false
	for _, r := range a + b {
		switch {
		case r >= '0' && r <= '9':
			digit = true
		case r < 'A' || r > 'Z':
			return false
		}
	}
	return dashed || digit
}
