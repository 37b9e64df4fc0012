package file
import ("testing";"os")
func TestGen(t *testing.T){ if err:=os.WriteFile("testdata/v1.0.studbay", encode(t, sample()),0o644);err!=nil{t.Fatal(err)}
 if _,err:=Decode("x", encode(t,sample())); err!=nil {t.Fatal(err)}}
